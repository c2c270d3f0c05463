package org.thalweg.clients;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusIntegrationTest;
import java.io.IOException;
import java.math.BigDecimal;
import java.net.http.HttpHeaders;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.thalweg.client.ApiClient;
import org.thalweg.client.ApiException;
import org.thalweg.client.LayoutsApi;
import org.thalweg.client.LimitsApi;
import org.thalweg.client.QuotesApi;
import org.thalweg.client.ReferenceApi;
import org.thalweg.client.RepricingsApi;
import org.thalweg.client.RoofsApi;
import org.thalweg.client.StockCutsApi;
import org.thalweg.client.TakeoffsApi;
import org.thalweg.client.TrimsApi;
import org.thalweg.client.ValleysApi;
import org.thalweg.client.model.LayoutAnswer;
import org.thalweg.client.model.LayoutRequest;
import org.thalweg.client.model.Money;
import org.thalweg.client.model.Problem;
import org.thalweg.client.model.QuoteRequest;
import org.thalweg.client.model.RepricingsRequest;
import org.thalweg.client.model.RoofRequest;
import org.thalweg.client.model.Severity;
import org.thalweg.client.model.StockCutRequest;
import org.thalweg.client.model.TrimsRequest;
import org.thalweg.client.model.ValleyRequest;

/**
 * The Java client that the build generates from the contract, against the packaged application. What the client has read is written
 * again and held against what a plain call is answered, so that nothing it drops or bends goes unseen.
 */
@QuarkusIntegrationTest
class JavaClientTrial {

    private ApiClient client = new ApiClient();
    private ObjectMapper json = new ObjectMapper();

    @BeforeEach
    void itIsToldWhereTheServiceIs() {
        client = new ApiClient();
        client.updateBaseUri(Examples.service());
        json = client.getObjectMapper();
    }

    static List<String> examples() throws IOException {
        return Examples.names();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void everyExampleIsSentAndReadWhole(String example) throws Exception {
        String request = Examples.request(example);
        Object answer =
                switch (Examples.path(example)) {
                    case "/v1/layouts" ->
                        new LayoutsApi(client)
                                .layOutRoof(whole(example, request, LayoutRequest.class), null, null, null, null);
                    case "/v1/quotes" ->
                        new QuotesApi(client).quoteTakeoff(whole(example, request, QuoteRequest.class));
                    case "/v1/repricings" ->
                        new RepricingsApi(client).repriceJobs(whole(example, request, RepricingsRequest.class));
                    case "/v1/roofs" -> new RoofsApi(client).readRoof(whole(example, request, RoofRequest.class));
                    case "/v1/stock-cuts" ->
                        new StockCutsApi(client).cutStock(whole(example, request, StockCutRequest.class));
                    case "/v1/takeoffs" ->
                        new TakeoffsApi(client).takeOffRoof(whole(example, request, LayoutRequest.class));
                    case "/v1/trims" -> new TrimsApi(client).layOutTrims(whole(example, request, TrimsRequest.class));
                    case "/v1/valleys" ->
                        new ValleysApi(client)
                                .layOutValley(whole(example, request, ValleyRequest.class), null, null, null, null);
                    default -> throw new AssertionError("no call for " + example);
                };
        assertReadWhole(Examples.answered(example, request), answer);
    }

    /** The request as the client's own type, which must not have lost or bent anything either. */
    private <T> T whole(String example, String request, Class<T> type) throws IOException {
        T typed = json.readValue(request, type);
        assertReadWhole(Examples.requestTree(example), typed);
        return typed;
    }

    private void assertReadWhole(JsonNode plain, Object typed) throws IOException {
        assertThat(Trees.differences(plain, json.readTree(json.writeValueAsBytes(typed))))
                .isEmpty();
    }

    @Test
    void tablesAndLimitsAreReadWhole() throws Exception {
        ReferenceApi reference = new ReferenceApi(client);
        assertReadWhole(Examples.got("/v1/reference/metals"), reference.readMetals());
        assertReadWhole(Examples.got("/v1/reference/gauges"), reference.readGauges());
        assertReadWhole(Examples.got("/v1/reference/rules"), reference.readRules());
        assertReadWhole(Examples.got("/v1/limits"), new LimitsApi(client).readLimits());
    }

    @Test
    void anEstimateIsTheQuoteOfItsTakeoff() throws Exception {
        QuoteRequest ofLayout = json.readValue(Examples.request("quotes-shed"), QuoteRequest.class);

        Money total = Estimate.quoted(client, Objects.requireNonNull(ofLayout.getLayout()), ofLayout.getPriceBook())
                .getTotal();

        assertThat(total).isEqualTo(new QuotesApi(client).quoteTakeoff(ofLayout).getTotal());
        assertThat(new BigDecimal(Objects.requireNonNull(total).getAmount())).isPositive();
    }

    @Test
    void anEstimateIsAskedAgainOnlyWhereThatHelps() throws Exception {
        List<Integer> answers = new ArrayList<>(List.of(503, 0, 200));
        assertThat(Estimate.insisted(() -> answered(answers.remove(0)))).isEqualTo("answered");
        assertThat(answers).isEmpty();

        List<Integer> refusals = new ArrayList<>(List.of(422, 200));
        assertThatExceptionOfType(ApiException.class)
                .isThrownBy(() -> Estimate.insisted(() -> answered(refusals.remove(0))));
        assertThat(refusals).containsExactly(200);
    }

    private static String answered(int status) throws ApiException {
        if (status != 200) {
            throw new ApiException(
                    status, "refused", HttpHeaders.of(Map.of("Retry-After", List.of("0")), (name, value) -> true), "");
        }
        return "answered";
    }

    @Test
    void whatIsRefusedSaysWhereInTheRequest() throws Exception {
        LayoutRequest request = json.readValue(Examples.request("layouts-shed"), LayoutRequest.class);
        request.getPanel().setCover("18 furlongs");
        assertThatExceptionOfType(ApiException.class)
                .isThrownBy(() -> new LayoutsApi(client).layOutRoof(request, null, null, null, null))
                .satisfies(refused -> {
                    assertThat(refused.getCode()).isEqualTo(400);
                    Problem problem = json.readValue(refused.getResponseBody(), Problem.class);
                    assertThat(problem.getErrors()).singleElement().satisfies(error -> {
                        assertThat(error.getCode()).isEqualTo("BAD_LENGTH");
                        assertThat(error.getPointer()).isEqualTo("#/panel/cover");
                    });
                });
    }

    @Test
    void aClientReadsAnswersOfALaterServiceWithNewMembersKindsAndCodes() throws Exception {
        ObjectNode answer = (ObjectNode) Examples.answered("layouts-demo", Examples.request("layouts-demo"));
        answer.put("later", "a member that came later");
        ((ObjectNode) answer.at("/roof/edges/0")).put("kind", "laterKind").put("later", 1);
        ((ObjectNode) answer.at("/findings/0")).put("code", "LATER_CODE").put("severity", "later");

        LayoutAnswer read = json.readValue(answer.toString(), LayoutAnswer.class);

        assertThat(read.getRoof().getEdges().get(0).getKind()).isEqualTo("laterKind");
        assertThat(read.getFindings().get(0).getCode()).isEqualTo("LATER_CODE");
        assertThat(read.getFindings().get(0).getSeverity()).isEqualTo(Severity.UNKNOWN_DEFAULT_OPEN_API);
        assertThat(read.getPanels()).hasSameSizeAs(answer.path("panels"));
    }
}
