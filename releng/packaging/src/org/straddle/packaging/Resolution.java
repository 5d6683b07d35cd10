package org.straddle.packaging;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.ServiceLoader;
import java.util.stream.Stream;

import org.osgi.framework.Bundle;
import org.osgi.framework.BundleException;
import org.osgi.framework.Constants;
import org.osgi.framework.launch.Framework;
import org.osgi.framework.launch.FrameworkFactory;
import org.osgi.framework.wiring.FrameworkWiring;

/**
 * Whether every bundle and fragment of a product resolves on the system that it is for: the framework itself reads the
 * manifests, told that it runs there. Nothing of the bundles is executed.
 */
final class Resolution {

    /** What each system is called in the words of OSGi's core specification, 4.2 "Environment properties". */
    private static final Map<String, String> OSNAME = Map.of("linux", "Linux", "win32", "Win32", "macosx", "MacOSX");

    private Resolution() {
    }

    /** @param system such as linux/gtk/x86_64 */
    static void check(Path product, String system) throws IOException, BundleException, InterruptedException {
        String[] parts = system.split("/");
        Path storage = Files.createTempDirectory("straddle-resolve");
        Map<String, String> configuration = new HashMap<>();
        configuration.put(Constants.FRAMEWORK_STORAGE, storage.toString());
        configuration.put(Constants.FRAMEWORK_STORAGE_CLEAN, Constants.FRAMEWORK_STORAGE_CLEAN_ONFIRSTINIT);
        configuration.put("osgi.os", parts[0]);
        configuration.put("osgi.ws", parts[1]);
        configuration.put("osgi.arch", parts[2]);
        configuration.put("osgi.configuration.area", storage.toUri().toString());
        configuration.put(Constants.FRAMEWORK_OS_NAME, OSNAME.get(parts[0]));
        configuration.put(Constants.FRAMEWORK_PROCESSOR, parts[2].replace('_', '-'));
        configuration.put(Constants.FRAMEWORK_OS_VERSION, "10.0");
        Framework framework = ServiceLoader.load(FrameworkFactory.class).findFirst().orElseThrow().newFramework(configuration);
        framework.init();
        try {
            List<Bundle> bundles = new ArrayList<>();
            List<String> faults = new ArrayList<>();
            for (Plugin plugin : Plugin.in(product.resolve("plugins"))) {
                if (!plugin.name().equals("org.eclipse.osgi")) {
                    bundles.add(framework.getBundleContext().installBundle("reference:" + plugin.path().toUri()));
                    faults.addAll(missingNatives(plugin));
                }
            }
            framework.adapt(FrameworkWiring.class).resolveBundles(bundles);
            for (Bundle bundle : bundles) {
                if (bundle.getState() != Bundle.RESOLVED) {
                    faults.add(bundle.getSymbolicName() + ": " + why(bundle));
                }
            }
            for (String needed : List.of("org.eclipse.swt." + parts[1] + "." + parts[0] + "." + parts[2],
                    "com.google.ortools." + parts[0] + "." + parts[2])) {
                if (bundles.stream().noneMatch(bundle -> bundle.getSymbolicName().equals(needed))) {
                    faults.add(needed + " is not in the product");
                }
            }
            if (!faults.isEmpty()) {
                throw new IllegalStateException("Not complete for " + system + ":\n" + String.join("\n", faults));
            }
            System.err.println(system + ": all " + bundles.size() + " bundles resolve");
        } finally {
            framework.stop();
            framework.waitForStop(0);
            delete(storage);
        }
    }

    private static String why(Bundle bundle) {
        if (bundle.getHeaders().get("Fragment-Host") != null) {
            return "a fragment that is attached to nothing";
        }
        try {
            bundle.start();
            return "resolved only when it was started";
        } catch (BundleException failure) {
            return failure.getMessage();
        }
    }

    /** Libraries that a manifest names and that are not there. */
    private static Collection<String> missingNatives(Plugin plugin) {
        List<String> missing = new ArrayList<>();
        for (String clause : Plugin.clauses(plugin.header("Bundle-NativeCode"))) {
            String file = clause.split(";")[0].strip();
            if (!plugin.isJar() && !Files.isRegularFile(plugin.path().resolve(file))) {
                missing.add(plugin.name() + ": " + file + " is not there");
            }
        }
        return missing;
    }

    private static void delete(Path folder) throws IOException {
        List<Path> all;
        try (Stream<Path> files = Files.walk(folder)) {
            all = files.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path file : all) {
            Files.deleteIfExists(file);
        }
    }
}
