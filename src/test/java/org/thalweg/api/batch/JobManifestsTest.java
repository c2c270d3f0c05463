package org.thalweg.api.batch;

import static org.assertj.core.api.Assertions.assertThat;

import io.fabric8.kubernetes.api.model.Container;
import io.fabric8.kubernetes.api.model.EnvVar;
import io.fabric8.kubernetes.api.model.PodSecurityContext;
import io.fabric8.kubernetes.api.model.PodSpec;
import io.fabric8.kubernetes.api.model.Volume;
import io.fabric8.kubernetes.api.model.VolumeMount;
import io.fabric8.kubernetes.api.model.apps.Deployment;
import io.fabric8.kubernetes.api.model.batch.v1.Job;
import io.fabric8.kubernetes.api.model.networking.v1.NetworkPolicy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.thalweg.Manifest;

/** The Jobs of a re-pricing do what the command line can do; {@code ManifestsTest} reads them strictly. */
class JobManifestsTest {

    private static final Path K8S = Path.of("k8s");

    @TempDir
    Path folder;

    /** Every pod of the Job, one after the other, with its mounts where this test has them; then the Job that adds up. */
    @Test
    void theJobsAsTheyAreWrittenDoTheWork() throws Exception {
        Night night = Night.of(folder, 200);
        Path out = Files.createDirectory(night.out("answers"));
        Job job = one("reprice", Job.class);
        for (int index = 0; index < job.getSpec().getCompletions(); index++) {
            Map<String, String> environment = environment(container(job));
            environment.put("JOB_COMPLETION_INDEX", String.valueOf(index));
            assertThat(Night.say(environment, here(container(job).getArgs(), night))
                            .code())
                    .isZero();
        }
        Container merge = container(one("reprice-merge", Job.class));
        Night.Ended ended = Night.say(environment(merge), here(merge.getArgs(), night));

        assertThat(ended.code()).as(ended.err()).isZero();
        assertThat(ended.out()).contains("\"jobs\":200,");
        assertThat(Night.answers(out)).hasLineCount(200);
    }

    @Test
    void everyPodIsToldItsIndexAndOfHowMany() {
        Job job = one("reprice", Job.class);
        assertThat(job.getSpec().getCompletionMode()).isEqualTo("Indexed");
        assertThat(environment(container(job)))
                .containsOnly(
                        Map.entry("JOB_SHARDS", String.valueOf(job.getSpec().getCompletions())));
    }

    @Test
    void theCommandIsTheOneThatIsDocumented() throws Exception {
        assertThat(Files.readString(Path.of("DEVELOPERS.md")))
                .contains("`"
                        + String.join(" ", container(one("reprice", Job.class)).getArgs()) + "`")
                .contains("`"
                        + String.join(
                                " ", container(one("reprice-merge", Job.class)).getArgs()) + "`");
    }

    @Test
    void aFailedShardIsTriedAgainAndAWrongCommandLineIsNot() {
        var spec = one("reprice", Job.class).getSpec();
        assertThat(spec.getBackoffLimitPerIndex()).isPositive();
        assertThat(spec.getMaxFailedIndexes()).isPositive().isLessThan(spec.getCompletions());
        assertThat(spec.getPodFailurePolicy().getRules()).first().satisfies(rule -> {
            assertThat(rule.getAction()).isEqualTo("FailJob");
            assertThat(rule.getOnExitCodes().getContainerName())
                    .isEqualTo(container(one("reprice", Job.class)).getName());
            assertThat(rule.getOnExitCodes().getValues())
                    .containsExactly(Night.say(Map.of(), "nonsense").code());
        });
        assertThat(spec.getTemplate().getSpec().getRestartPolicy())
                .as("or the policy is refused")
                .isEqualTo("Never");
    }

    @ParameterizedTest
    @ValueSource(strings = {"reprice", "reprice-merge"})
    void thePodsAreAsConfinedAsThoseOfTheService(String which) {
        PodSpec pod = pod(one(which, Job.class));
        PodSpec service = one("base", Deployment.class).getSpec().getTemplate().getSpec();
        PodSecurityContext context = pod.getSecurityContext();
        assertThat(context.getRunAsNonRoot()).isTrue();
        assertThat(context.getRunAsUser())
                .isEqualTo(service.getSecurityContext().getRunAsUser());
        assertThat(context.getRunAsGroup())
                .isEqualTo(service.getSecurityContext().getRunAsGroup());
        assertThat(context.getSeccompProfile())
                .isEqualTo(service.getSecurityContext().getSeccompProfile());
        assertThat(context.getFsGroup()).as("or nobody may write answers").isEqualTo(context.getRunAsGroup());
        assertThat(container(one(which, Job.class)).getSecurityContext())
                .isEqualTo(service.getContainers().get(0).getSecurityContext());
        assertThat(pod.getAutomountServiceAccountToken()).isFalse();
        assertThat(pod.getEnableServiceLinks()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"reprice", "reprice-merge"})
    void onlyTheAnswersCanBeWritten(String which) {
        Job job = one(which, Job.class);
        assertThat(container(job).getVolumeMounts())
                .filteredOn(mount -> !Boolean.TRUE.equals(mount.getReadOnly()))
                .extracting(VolumeMount::getMountPath)
                .containsExactly("/answers");
        assertThat(container(job).getVolumeMounts())
                .extracting(VolumeMount::getName)
                .containsExactlyElementsOf(
                        pod(job).getVolumes().stream().map(Volume::getName).toList());
        assertThat(container(job).getResources().getRequests()).containsOnlyKeys("cpu", "memory");
        assertThat(container(job).getResources().getLimits()).containsOnlyKeys("cpu", "memory");
    }

    @ParameterizedTest
    @ValueSource(strings = {"reprice", "reprice-merge"})
    void nothingComesInToThePodsAndNothingGoesOut(String which) {
        var policy = one("reprice", NetworkPolicy.class).getSpec();
        assertThat(policy.getPodSelector().getMatchLabels())
                .isEqualTo(one(which, Job.class)
                        .getSpec()
                        .getTemplate()
                        .getMetadata()
                        .getLabels());
        assertThat(policy.getPolicyTypes()).containsExactlyInAnyOrder("Ingress", "Egress");
        assertThat(policy.getIngress()).isEmpty();
        assertThat(policy.getEgress()).isEmpty();
    }

    private static Object[] here(List<String> args, Night night) {
        Map<String, Path> mounts =
                Map.of("/book/book.json", night.book, "/jobs", night.jobs, "/answers", night.out("answers"));
        return args.stream()
                .map(arg -> mounts.containsKey(arg) ? mounts.get(arg).toString() : arg)
                .toArray();
    }

    private static Map<String, String> environment(Container container) {
        return container.getEnv().stream()
                .collect(Collectors.toMap(EnvVar::getName, EnvVar::getValue, (one, other) -> other, HashMap::new));
    }

    private static <T> T one(String folder, Class<T> kind) {
        List<T> found = Manifest.readAll(K8S.resolve(folder)).stream()
                .map(Manifest::model)
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
        assertThat(found).as("%s in %s", kind.getSimpleName(), folder).hasSize(1);
        return found.get(0);
    }

    private static PodSpec pod(Job job) {
        return job.getSpec().getTemplate().getSpec();
    }

    private static Container container(Job job) {
        assertThat(pod(job).getInitContainers()).isEmpty();
        assertThat(pod(job).getContainers()).hasSize(1);
        return pod(job).getContainers().get(0);
    }
}
