package org.straddle.testing;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.lang.reflect.Proxy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.jar.Manifest;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.eclipse.core.runtime.adaptor.EclipseStarter;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;

/**
 * The framework of the product with bundles of tests added to it. The test library stays on the class path of this process and
 * is lent to them, so that one and the same finds the tests and is called by them.
 */
final class Framework implements TestRun.ClassSource, AutoCloseable {

    /** {@code package;version="[from,to)"} in what a bundle imports. */
    private static final Pattern IMPORT = Pattern.compile("([a-z0-9.]+);version=\"\\[([0-9.]+),[^\"]*\"");
    private static final Pattern BUNDLE = Pattern.compile("reference:file:([^,]+)");

    private final Path work;

    private Framework(Path work) {
        this.work = work;
    }

    /** @throws Exception if it does not start */
    static Framework of(Path product, List<Path> bundles) throws Exception {
        Path work = Files.createTempDirectory("straddle-framework");
        Path configuration = Files.createDirectories(work.resolve("configuration"));
        Properties settings = new Properties();
        try (InputStream in = Files.newInputStream(product.resolve("configuration/config.ini"))) {
            settings.load(in);
        }
        Path plugins = product.resolve("plugins").toAbsolutePath();
        List<String> started = new ArrayList<>();
        started.add(BUNDLE.matcher(settings.getProperty("osgi.bundles")).replaceAll("reference:file:" + Matcher.quoteReplacement(plugins + "/") + "$1"));
        List<String> lent = new ArrayList<>();
        for (Path bundle : bundles) {
            started.add("reference:file:" + jar(bundle).toAbsolutePath() + "@4");
            lent.addAll(testLibrary(bundle));
        }
        settings.setProperty("osgi.bundles", String.join(",", started));
        try (OutputStream out = Files.newOutputStream(configuration.resolve("config.ini"))) {
            settings.store(out, null);
        }
        Map<String, String> properties = new HashMap<>();
        properties.put("osgi.install.area", product.toUri().toString());
        properties.put("osgi.configuration.area", configuration.toUri().toString());
        properties.put("osgi.configuration.cascaded", "false");
        properties.put("osgi.framework.useSystemProperties", "true");
        properties.put("osgi.parentClassloader", "app");
        properties.put("osgi.frameworkParentClassloader", "app");
        properties.put("org.osgi.framework.system.packages.extra", String.join(",", lent));
        EclipseStarter.setInitialProperties(properties);
        EclipseStarter.startup(new String[] {"-data", work.resolve("workspace").toString(), "-nosplash", "-application", "none"}, null);
        tellOfNoApplication();
        return new Framework(work);
    }

    /** A workbench asks which application it was started by, and with what words: by none, with none. */
    private static void tellOfNoApplication() throws ClassNotFoundException {
        BundleContext context = EclipseStarter.getSystemBundleContext();
        Class<?> type = installed("org.eclipse.equinox.app").loadClass("org.eclipse.equinox.app.IApplicationContext");
        Object application = Proxy.newProxyInstance(type.getClassLoader(), new Class<?>[] {type},
                (proxy, method, arguments) -> method.getName().equals("getArguments") ? Map.of("application.args", new String[0]) : null);
        context.registerService(type.getName(), application, null);
    }

    private static Path jar(Path bundle) throws IOException {
        try (Stream<Path> files = Files.list(bundle.resolve("target"))) {
            return files.filter(file -> file.toString().endsWith(".jar")).findFirst().orElseThrow();
        }
    }

    /** What a bundle imports is the test library: of ours and of the platform it requires whole bundles. */
    private static List<String> testLibrary(Path bundle) throws IOException {
        try (InputStream in = Files.newInputStream(bundle.resolve("META-INF/MANIFEST.MF"))) {
            String imports = new Manifest(in).getMainAttributes().getValue("Import-Package");
            return IMPORT.matcher(imports).results().map(found -> found.group(1) + ";version=" + found.group(2)).toList();
        }
    }

    @Override
    public Class<?> load(Path bundle, String name) throws ClassNotFoundException {
        return installed(bundle.getFileName().toString()).loadClass(name);
    }

    private static Bundle installed(String name) {
        return Stream.of(EclipseStarter.getSystemBundleContext().getBundles()).filter(bundle -> name.equals(bundle.getSymbolicName()))
                .findFirst().orElseThrow(() -> new IllegalStateException(name + " is not installed"));
    }

    @Override
    public void close() throws Exception {
        EclipseStarter.shutdown();
        try (Stream<Path> files = Files.walk(work)) {
            files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
        }
    }
}
