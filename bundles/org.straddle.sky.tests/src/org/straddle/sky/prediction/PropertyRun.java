package org.straddle.sky.prediction;

import static org.junit.platform.engine.discovery.DiscoverySelectors.selectClass;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectMethod;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.DynamicTest;
import org.junit.platform.engine.DiscoverySelector;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.engine.reporting.ReportEntry;
import org.junit.platform.engine.support.descriptor.MethodSource;
import org.junit.platform.launcher.Launcher;
import org.junit.platform.launcher.LauncherDiscoveryRequest;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.core.LauncherConfig;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;

import net.jqwik.engine.JqwikTestEngine;

/**
 * The jqwik properties of a class, each as a test of Jupiter's. Among bundles the runner of tests looks for engines where
 * jqwik's is not seen; Jupiter's is, so it starts the other. The name of a class of properties must not end in Test, or
 * a runner that does see both engines would try it twice.
 */
final class PropertyRun {

    private final Launcher launcher = LauncherFactory.create(LauncherConfig.builder()
            .enableTestEngineAutoRegistration(false).enableLauncherSessionListenerAutoRegistration(false)
            .enableLauncherDiscoveryListenerAutoRegistration(false).enablePostDiscoveryFilterAutoRegistration(false)
            .enableTestExecutionListenerAutoRegistration(false).addTestEngines(new JqwikTestEngine()).build());

    private PropertyRun() {
    }

    static Stream<DynamicTest> of(Class<?> properties) {
        PropertyRun run = new PropertyRun();
        List<TestIdentifier> found = run.properties(properties);
        Assertions.assertFalse(found.isEmpty(), "No property in " + properties);
        return found.stream().map(property -> DynamicTest.dynamicTest(property.getDisplayName(), () -> run.test(property)));
    }

    private List<TestIdentifier> properties(Class<?> type) {
        List<TestIdentifier> found = new ArrayList<>();
        withServices(() -> {
            var plan = launcher.discover(request(selectClass(type)));
            plan.getRoots().forEach(root -> plan.getDescendants(root).stream().filter(TestIdentifier::isTest)
                    .forEach(found::add));
        });
        return found;
    }

    /** Fails with what jqwik reports: the sample made as small as it gets, the one found first, and the seed. */
    private void test(TestIdentifier property) {
        StringBuilder report = new StringBuilder();
        List<TestExecutionResult> results = new ArrayList<>();
        MethodSource source = (MethodSource) property.getSource().orElseThrow();
        LauncherDiscoveryRequest request = request(selectMethod(source.getJavaClass(), source.getJavaMethod()));
        withServices(() -> launcher.execute(request, new TestExecutionListener() {
            @Override
            public void reportingEntryPublished(TestIdentifier about, ReportEntry entry) {
                entry.getKeyValuePairs().forEach((key, value) -> report.append(key).append(": ").append(value).append('\n'));
            }

            @Override
            public void executionFinished(TestIdentifier about, TestExecutionResult result) {
                if (about.isTest() || result.getThrowable().isPresent()) {
                    results.add(result);
                }
            }
        }));
        Assertions.assertEquals(1, results.size(), "Runs of " + property.getDisplayName());
        results.get(0).getThrowable().ifPresent(failure -> Assertions.fail(failure.getMessage() + '\n' + report, failure));
        Assertions.assertEquals(TestExecutionResult.Status.SUCCESSFUL, results.get(0).getStatus());
    }

    private static LauncherDiscoveryRequest request(DiscoverySelector selector) {
        return LauncherDiscoveryRequestBuilder.request().selectors(selector)
                // No file of earlier runs; and the report goes to us, not to the console.
                .configurationParameter("jqwik.database", "")
                .configurationParameter("jqwik.reporting.usejunitplatform", "true").build();
    }

    /** The engine finds its parts by the thread's class loader, which is some other bundle's. */
    private static void withServices(Runnable work) {
        Thread thread = Thread.currentThread();
        ClassLoader before = thread.getContextClassLoader();
        thread.setContextClassLoader(JqwikTestEngine.class.getClassLoader());
        try {
            work.run();
        } finally {
            thread.setContextClassLoader(before);
        }
    }
}
