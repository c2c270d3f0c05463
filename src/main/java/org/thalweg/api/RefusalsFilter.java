package org.thalweg.api;

import java.util.Map;
import java.util.TreeMap;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.responses.APIResponse;
import org.eclipse.microprofile.openapi.models.responses.APIResponses;

/**
 * Writes into the contract how operations refuse, which is alike for all of them: no resource says it for itself. Each refusal
 * is told once, among the responses of {@code META-INF/openapi.yaml}.
 */
public class RefusalsFilter implements OASFilter {

    private static final Map<String, String> OF_ALL = Map.of("406", "NotAcceptable", "500", "Internal");

    private static final Map<String, String> OF_BODIES =
            Map.of("400", "BadRequest", "413", "TooLarge", "415", "UnsupportedMediaType", "422", "NotARoof");

    @Override
    public Operation filterOperation(Operation operation) {
        Map<String, APIResponse> responses =
                new TreeMap<>(operation.getResponses().getAPIResponses());
        add(OF_ALL, responses);
        if (operation.getRequestBody() != null) {
            add(OF_BODIES, responses);
        }
        APIResponses inOrder = OASFactory.createAPIResponses();
        responses.forEach(inOrder::addAPIResponse);
        operation.setResponses(inOrder);
        return operation;
    }

    private static void add(Map<String, String> refusals, Map<String, APIResponse> responses) {
        refusals.forEach((status, name) ->
                responses.put(status, OASFactory.createAPIResponse().ref(name)));
    }
}
