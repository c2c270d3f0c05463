package org.thalweg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.fabric8.kubernetes.api.model.Container;
import io.fabric8.kubernetes.api.model.ContainerPort;
import io.fabric8.kubernetes.api.model.EnvVar;
import io.fabric8.kubernetes.api.model.IntOrString;
import io.fabric8.kubernetes.api.model.PodSecurityContext;
import io.fabric8.kubernetes.api.model.PodSpec;
import io.fabric8.kubernetes.api.model.Probe;
import io.fabric8.kubernetes.api.model.Quantity;
import io.fabric8.kubernetes.api.model.Service;
import io.fabric8.kubernetes.api.model.ServicePort;
import io.fabric8.kubernetes.api.model.VolumeMount;
import io.fabric8.kubernetes.api.model.apps.Deployment;
import io.fabric8.kubernetes.api.model.autoscaling.v2.HorizontalPodAutoscaler;
import io.fabric8.kubernetes.api.model.autoscaling.v2.HorizontalPodAutoscalerSpec;
import io.fabric8.kubernetes.api.model.networking.v1.NetworkPolicy;
import io.fabric8.kubernetes.api.model.networking.v1.NetworkPolicyIngressRule;
import io.fabric8.kubernetes.api.model.networking.v1.NetworkPolicyPort;
import io.fabric8.kubernetes.api.model.networking.v1.NetworkPolicySpec;
import io.fabric8.kubernetes.api.model.policy.v1.PodDisruptionBudget;
import java.io.File;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.xpath.XPathExpressionException;
import javax.xml.xpath.XPathFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snakeyaml.engine.v2.exceptions.DuplicateKeyException;
import org.xml.sax.InputSource;

/**
 * What an operator applies, read strictly; and that of {@code k8s/base} held to what the comments there promise. Those of
 * the other folders have a test of their own where what they run is tested.
 */
class ManifestsTest {

    private static final Path ALL = Path.of("k8s");
    private static final Path BASE = ALL.resolve("base");
    private static final List<Manifest> MANIFESTS = Manifest.readAll(BASE);

    static List<Path> folders() throws IOException {
        try (Stream<Path> folders = Files.list(ALL)) {
            return folders.sorted().toList();
        }
    }

    static List<Manifest> manifests() throws IOException {
        return folders().stream()
                .flatMap(folder -> Manifest.readAll(folder).stream())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("manifests")
    void everyMemberIsOneKubernetesKnows(Manifest manifest) {
        assertThat(manifest.unknownMembers()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("manifests")
    void everyValueIsOfTheTypeKubernetesReads(Manifest manifest) {
        assertThat(manifest.writtenAgain()).isEqualTo(manifest.written());
    }

    @Test
    void aMisspeltMemberIsNoticedHoweverDeep() {
        Manifest misspelt = deploymentWith("readOnlyRootFilesystem", "readOnlyRootFileSystem");
        assertThat(misspelt.unknownMembers())
                .containsExactly("/spec/template/spec/containers/0/securityContext/readOnlyRootFileSystem");
    }

    @Test
    void aVersionKubernetesDoesNotKnowIsNoticed() {
        assertThat(deploymentWith("apps/v1", "apps/v9").unknownMembers()).contains("/spec");
    }

    @Test
    void aQuotedTruthIsNoticed() {
        Manifest quoted = deploymentWith("runAsNonRoot: true", "runAsNonRoot: \"true\"");
        assertThat(quoted.writtenAgain()).isNotEqualTo(quoted.written());
    }

    @Test
    void aMemberWrittenTwiceIsRefused() {
        assertThatThrownBy(() -> deploymentWith("maxSurge: 1", "maxUnavailable: 1"))
                .isInstanceOf(DuplicateKeyException.class);
    }

    @ParameterizedTest
    @MethodSource("folders")
    void theKustomizationListsExactlyTheFilesBesideIt(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            List<String> beside =
                    files.map(file -> file.getFileName().toString()).sorted().toList();
            assertThat(Stream.concat(Stream.of("kustomization.yaml"), listed(folder, "resources"))
                            .sorted())
                    .isEqualTo(beside);
        }
    }

    @ParameterizedTest
    @MethodSource("folders")
    void theKustomizationNamesTheVersionOfThePomAndChangesNothingElse(Path folder) throws XPathExpressionException {
        assertThat(kustomization(folder)).containsOnlyKeys("apiVersion", "kind", "resources", "images");
        assertThat(listed(folder, "images"))
                .containsExactly(Map.of("name", container().getImage(), "newTag", versionInThePom()));
    }

    @Test
    void allThreeProbesAskTheManagementPort() {
        assertProbe(container().getStartupProbe(), "/q/health/started");
        assertProbe(container().getLivenessProbe(), "/q/health/live");
        assertProbe(container().getReadinessProbe(), "/q/health/ready");
    }

    @Test
    void theContainersPortsAreTheOnesTheServiceListensOn() {
        assertThat(portNamed("http")).hasToString(setting("quarkus.http.port"));
        assertThat(portNamed("management")).hasToString(setting("quarkus.management.port"));
    }

    @Test
    void theServiceListensOnThePodsAddressAndNotOnLoopback() {
        assertThat(variable("QUARKUS_HTTP_HOST")).isEqualTo("0.0.0.0");
        assertThat(variable("QUARKUS_MANAGEMENT_HOST")).isEqualTo("0.0.0.0");
    }

    @Test
    void thePodRunsAsANumberedUserThatIsNotRoot() {
        PodSecurityContext context = pod().getSecurityContext();
        assertThat(context.getRunAsNonRoot()).isTrue();
        assertThat(context.getRunAsUser()).isPositive();
        assertThat(context.getRunAsGroup()).isPositive();
        assertThat(container().getSecurityContext().getRunAsUser())
                .as("would win over the pod's")
                .isNull();
    }

    @Test
    void theImageRunsAsTheSameUser() {
        PodSecurityContext context = pod().getSecurityContext();
        assertThat(Manifest.text(Path.of("src", "main", "docker", "Containerfile"))
                        .lines())
                .contains("USER %d:%d".formatted(context.getRunAsUser(), context.getRunAsGroup()));
    }

    @Test
    void theContainerCanNeitherGainRightsNorChangeItself() {
        var context = container().getSecurityContext();
        assertThat(context.getAllowPrivilegeEscalation()).isFalse();
        assertThat(context.getPrivileged()).isNull();
        assertThat(context.getReadOnlyRootFilesystem()).isTrue();
        assertThat(context.getCapabilities().getDrop()).containsExactly("ALL");
        assertThat(context.getCapabilities().getAdd()).isEmpty();
    }

    @Test
    void systemCallsAreFiltered() {
        assertThat(pod().getSecurityContext().getSeccompProfile().getType()).isEqualTo("RuntimeDefault");
        assertThat(container().getSecurityContext().getSeccompProfile())
                .as("would win over the pod's")
                .isNull();
    }

    @Test
    void nothingOfTheClusterOrTheNodeIsHandedToThePod() {
        assertThat(pod().getAutomountServiceAccountToken()).isFalse();
        assertThat(pod().getEnableServiceLinks()).isFalse();
        assertThat(pod().getHostNetwork()).isNull();
        assertThat(pod().getHostPID()).isNull();
        assertThat(pod().getHostIPC()).isNull();
    }

    @Test
    void onlyTmpCanBeWrittenAndNotWithoutEnd() {
        assertThat(container().getVolumeMounts())
                .extracting(VolumeMount::getMountPath)
                .containsExactly("/tmp");
        assertThat(pod().getVolumes()).singleElement().satisfies(volume -> assertThat(
                        volume.getEmptyDir().getSizeLimit())
                .isNotNull());
    }

    @Test
    void processorAndMemoryAreAskedForAndLimited() {
        Map<String, Quantity> requests = container().getResources().getRequests();
        Map<String, Quantity> limits = container().getResources().getLimits();
        assertThat(requests).containsOnlyKeys("cpu", "memory");
        assertThat(limits).containsOnlyKeys("cpu", "memory");
        assertThat(limits.get("memory"))
                .as("or a node may promise what it lacks")
                .isEqualTo(requests.get("memory"));
    }

    @Test
    void aPodThatStopsHasTimeToFinishWhatItBegan() {
        long untilWithdrawn = container().getLifecycle().getPreStop().getSleep().getSeconds();
        long untilFinished = Long.parseLong(variable("QUARKUS_SHUTDOWN_TIMEOUT").replaceFirst("s$", ""));
        assertThat(pod().getTerminationGracePeriodSeconds()).isGreaterThan(untilWithdrawn + untilFinished);
    }

    @Test
    void aNewVersionNeverLeavesFewerPodsThanBefore() {
        var rolling = one(Deployment.class).getSpec().getStrategy().getRollingUpdate();
        assertThat(rolling.getMaxUnavailable()).isEqualTo(new IntOrString(0));
        assertThat(rolling.getMaxSurge()).isEqualTo(new IntOrString(1));
    }

    @Test
    void podsAreSpreadOverNodes() {
        assertThat(pod().getTopologySpreadConstraints()).anySatisfy(spread -> {
            assertThat(spread.getTopologyKey()).isEqualTo("kubernetes.io/hostname");
            assertThat(spread.getLabelSelector().getMatchLabels()).isEqualTo(podLabels());
        });
    }

    @Test
    void everySelectorFindsThePods() {
        assertThat(one(Deployment.class).getSpec().getSelector().getMatchLabels())
                .isEqualTo(podLabels());
        assertThat(one(Service.class).getSpec().getSelector()).isEqualTo(podLabels());
        assertThat(one(PodDisruptionBudget.class).getSpec().getSelector().getMatchLabels())
                .isEqualTo(podLabels());
        assertThat(policy().getPodSelector().getMatchLabels()).isEqualTo(podLabels());
    }

    @Test
    void callersReachTheServiceThroughPort80AndNothingElseThroughIt() {
        assertThat(one(Service.class).getSpec().getPorts()).singleElement().satisfies(port -> {
            assertThat(port).extracting(ServicePort::getPort).isEqualTo(80);
            assertThat(portNamed(port.getTargetPort().getStrVal())).isEqualTo(8080);
        });
    }

    @Test
    void theAutoscalerAloneOwnsTheCountOfThisDeployment() {
        HorizontalPodAutoscalerSpec scaler = one(HorizontalPodAutoscaler.class).getSpec();
        Deployment scaled = one(Deployment.class);
        assertThat(scaler.getScaleTargetRef().getApiVersion()).isEqualTo(scaled.getApiVersion());
        assertThat(scaler.getScaleTargetRef().getKind()).isEqualTo(scaled.getKind());
        assertThat(scaler.getScaleTargetRef().getName())
                .isEqualTo(scaled.getMetadata().getName());
        assertThat(scaled.getSpec().getReplicas()).isNull();
        assertThat(scaler.getMinReplicas()).isBetween(2, scaler.getMaxReplicas());
    }

    @Test
    void theAutoscalerMeasuresAgainstSomethingThePodAsksFor() {
        assertThat(one(HorizontalPodAutoscaler.class).getSpec().getMetrics())
                .extracting(metric -> metric.getResource().getName())
                .isNotEmpty()
                .isSubsetOf(container().getResources().getRequests().keySet());
    }

    @Test
    void aDrainTakesOnePodAtATime() {
        assertThat(one(PodDisruptionBudget.class).getSpec().getMaxUnavailable()).isEqualTo(new IntOrString(1));
    }

    @Test
    void thePolicyLetsCallersAndMonitoringInAndNothingOut() {
        assertThat(policy().getPolicyTypes()).containsExactlyInAnyOrder("Ingress", "Egress");
        assertThat(policy().getEgress()).isEmpty();
        assertThat(policy().getIngress()).hasSize(2);
        assertThat(namespacesLetInTo(8080)).as("any namespace").containsExactly(Map.of());
        assertThat(namespacesLetInTo(9000)).containsExactly(Map.of("kubernetes.io/metadata.name", "monitoring"));
    }

    @ParameterizedTest
    @MethodSource("folders")
    void kubectlRendersTheSameObjectsWithTheImagesVersion(Path folder) throws Exception {
        assumeTrue(kubectlIsHere(), "kubectl is not on the PATH, so nothing was rendered");
        Process kubectl = new ProcessBuilder("kubectl", "kustomize", folder.toString())
                .redirectErrorStream(true)
                .start();
        String rendered = new String(kubectl.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(kubectl.waitFor()).as(rendered).isZero();

        String image = "image: " + container().getImage();
        String tag = ":" + versionInThePom();
        assertThat(rendered).contains(image + tag);
        assertThat(Manifest.documents(rendered.replace(image + tag, image)))
                .containsExactlyInAnyOrderElementsOf(
                        Manifest.readAll(folder).stream().map(Manifest::written).toList());
    }

    private static void assertProbe(Probe probe, String path) {
        assertThat(probe.getHttpGet().getPath()).isEqualTo(path);
        assertThat(portNamed(probe.getHttpGet().getPort().getStrVal())).isEqualTo(9000);
    }

    private static int portNamed(String name) {
        return container().getPorts().stream()
                .filter(port -> port.getName().equals(name))
                .map(ContainerPort::getContainerPort)
                .findFirst()
                .orElseThrow();
    }

    private static String variable(String name) {
        return container().getEnv().stream()
                .filter(variable -> variable.getName().equals(name))
                .map(EnvVar::getValue)
                .findFirst()
                .orElseThrow();
    }

    private static List<Map<String, String>> namespacesLetInTo(int port) {
        return policy().getIngress().stream()
                .filter(rule -> portsOf(rule).equals(List.of(new IntOrString(port))))
                .flatMap(rule -> rule.getFrom().stream())
                .map(peer -> peer.getNamespaceSelector().getMatchLabels())
                .toList();
    }

    private static List<IntOrString> portsOf(NetworkPolicyIngressRule rule) {
        return rule.getPorts().stream().map(NetworkPolicyPort::getPort).toList();
    }

    private static <T> T one(Class<T> kind) {
        List<T> found = MANIFESTS.stream()
                .map(Manifest::model)
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
        assertThat(found).as(kind.getSimpleName()).hasSize(1);
        return found.get(0);
    }

    private static Map<String, String> podLabels() {
        return one(Deployment.class).getSpec().getTemplate().getMetadata().getLabels();
    }

    private static PodSpec pod() {
        return one(Deployment.class).getSpec().getTemplate().getSpec();
    }

    private static Container container() {
        assertThat(pod().getInitContainers()).isEmpty();
        assertThat(pod().getContainers()).hasSize(1);
        return pod().getContainers().get(0);
    }

    private static NetworkPolicySpec policy() {
        return one(NetworkPolicy.class).getSpec();
    }

    /** The deployment with one mistake put into it, to see that the mistake is noticed. */
    private static Manifest deploymentWith(String right, String wrong) {
        String yaml = Manifest.text(BASE.resolve("deployment.yaml"));
        assertThat(yaml).contains(right);
        return Manifest.read("mistake", yaml.replace(right, wrong)).get(0);
    }

    private static Map<String, Object> kustomization(Path folder) {
        return Manifest.documents(Manifest.text(folder.resolve("kustomization.yaml")))
                .get(0);
    }

    private static Stream<Object> listed(Path folder, String member) {
        return ((List<?>) kustomization(folder).getOrDefault(member, List.of()))
                .stream().map(Object.class::cast);
    }

    private static String versionInThePom() throws XPathExpressionException {
        return XPathFactory.newInstance()
                .newXPath()
                .evaluate("/*/*[local-name()='version']", new InputSource("pom.xml"));
    }

    private static String setting(String name) {
        try {
            Properties settings = new Properties();
            settings.load(
                    new StringReader(Manifest.text(Path.of("src", "main", "resources", "application.properties"))));
            return settings.getProperty(name, name + " is not set");
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static boolean kubectlIsHere() {
        return Pattern.compile(File.pathSeparator, Pattern.LITERAL)
                .splitAsStream(System.getenv().getOrDefault("PATH", ""))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, "kubectl")));
    }
}
