package org.straddle.packaging;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * Makes the folder that is packed and that {@code releng/run} starts: the product's plug-ins without signatures, its
 * configuration without what differs from build to build, and one jar that holds nothing but the class path of the
 * command line.
 */
final class Application {

    /** Signed jars cannot be kept in an archive of shared classes, and checking them takes a third of a second. */
    private static final Pattern SIGNATURE = Pattern.compile("META-INF/[^/]+\\.(SF|RSA|DSA|EC)");

    /** Texts of licences that several libraries share, and the library whose jar holds them. */
    private static final Map<String, List<String>> LICENCES = Map.of(
            "Apache-2.0.txt", List.of("com.sun.jna", "META-INF/AL2.0"),
            "LGPL-2.1.txt", List.of("com.sun.jna", "META-INF/LGPL2.1"),
            "EPL-2.0.txt", List.of("jakarta.annotation-api", "META-INF/LICENSE.md"));

    private final Path product;
    private final Path target;
    private final Path unsigned;
    private final long time;

    /**
     * @param unsigned where jars without their signatures are kept: all systems have the same
     * @param time     of every entry written anew, in milliseconds
     */
    Application(Path product, Path target, Path unsigned, long time) {
        this.product = product;
        this.target = target;
        this.unsigned = unsigned;
        this.time = time;
    }

    void make() throws IOException {
        Path plugins = Files.createDirectories(target.resolve("plugins"));
        for (Plugin plugin : Plugin.in(product.resolve("plugins"))) {
            Path copy = plugins.resolve(plugin.fileName());
            if (!plugin.isJar()) {
                copyFolder(plugin.path(), copy);
            } else if (isSigned(plugin.path())) {
                Files.copy(unsigned(plugin), copy);
            } else {
                Files.copy(plugin.path(), copy);
            }
        }
        Path configuration = Files.createDirectories(target.resolve("configuration"));
        Files.writeString(configuration.resolve("config.ini"), configuration(), StandardCharsets.ISO_8859_1);
        List<Plugin> all = Plugin.in(plugins);
        classPathJar(all);
        String build = all.stream().filter(plugin -> plugin.name().equals("org.straddle.cli")).findFirst().orElseThrow().version();
        Files.writeString(target.resolve("build"), build + "\n");
    }

    void addNotices(Notices notices) throws IOException {
        Path plugins = target.resolve("plugins");
        Files.writeString(target.resolve("THIRD-PARTY.txt"), notices.of(plugins));
        Path folder = Files.createDirectories(target.resolve("licenses"));
        for (Plugin plugin : Plugin.in(plugins)) {
            for (Map.Entry<String, List<String>> text : LICENCES.entrySet()) {
                if (plugin.name().equals(text.getValue().get(0))) {
                    try (ZipFile zip = new ZipFile(plugin.path().toFile());
                            InputStream in = zip.getInputStream(zip.getEntry(text.getValue().get(1)))) {
                        Files.copy(in, folder.resolve(text.getKey()));
                    }
                }
            }
        }
    }

    private static void copyFolder(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                Path copy = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(copy);
                } else {
                    Files.copy(file, copy);
                }
            }
        }
    }

    private static boolean isSigned(Path jar) throws IOException {
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            return zip.stream().anyMatch(entry -> SIGNATURE.matcher(entry.getName()).matches());
        }
    }

    /** Two systems may be packed at a time, so a jar comes into its place whole. */
    private Path unsigned(Plugin plugin) throws IOException {
        Path kept = unsigned.resolve(plugin.fileName());
        if (!Files.exists(kept)) {
            Path part = Files.createDirectories(unsigned).resolve(plugin.fileName() + "." + ProcessHandle.current().pid());
            unsign(plugin.path(), part);
            Files.move(part, kept, StandardCopyOption.ATOMIC_MOVE);
        }
        return kept;
    }

    private static void unsign(Path jar, Path copy) throws IOException {
        try (JarFile from = new JarFile(jar.toFile(), false);
                ZipOutputStream to = new ZipOutputStream(Files.newOutputStream(copy))) {
            for (ZipEntry entry : (Iterable<ZipEntry>) from.stream().<ZipEntry>map(each -> each)::iterator) {
                if (SIGNATURE.matcher(entry.getName()).matches()) {
                    continue;
                }
                byte[] bytes;
                try (InputStream in = from.getInputStream(entry)) {
                    bytes = in.readAllBytes();
                }
                if (entry.getName().equals(JarFile.MANIFEST_NAME)) {
                    bytes = mainSection(bytes);
                }
                ZipEntry written = new ZipEntry(entry.getName());
                written.setTimeLocal(entry.getTimeLocal());
                to.putNextEntry(written);
                to.write(bytes);
            }
        }
    }

    /** Digests of entries stand in the sections after the first empty line. */
    private static byte[] mainSection(byte[] manifest) {
        String text = new String(manifest, StandardCharsets.UTF_8).replace("\r\n", "\n");
        int end = text.indexOf("\n\n");
        return (end < 0 ? text : text.substring(0, end + 2)).getBytes(StandardCharsets.UTF_8);
    }

    /** In the order of names, without comments (they hold the time) and without the installer, which is not there. */
    private String configuration() throws IOException {
        Properties properties = new Properties();
        try (InputStream in = Files.newInputStream(product.resolve("configuration/config.ini"))) {
            properties.load(in);
        }
        properties.keySet().removeIf(key -> key.toString().startsWith("eclipse.p2."));
        // Nobody reads the console of a window; what goes wrong is told in it and stands in the log.
        StringBuilder text = new StringBuilder();
        new TreeMap<>(properties).forEach((key, value) -> text.append(key).append('=')
                .append(value.toString().replace("\\", "\\\\").replace(":", "\\:")).append('\n'));
        return text.toString();
    }

    private void classPathJar(List<Plugin> plugins) throws IOException {
        List<String> lines = new ArrayList<>(List.of("Manifest-Version: 1.0", "Main-Class: org.straddle.cli.Main"));
        StringBuilder path = new StringBuilder("Class-Path:");
        ClassPath.of(plugins).forEach(plugin -> path.append(" plugins/").append(plugin.fileName()));
        lines.add(path.toString());
        ByteArrayOutputStream manifest = new ByteArrayOutputStream();
        for (String line : lines) {
            fold(line, manifest);
        }
        manifest.writeBytes(new byte[] {'\n'});
        try (ZipOutputStream jar = new ZipOutputStream(Files.newOutputStream(target.resolve("straddle.jar")))) {
            ZipEntry entry = new ZipEntry(JarFile.MANIFEST_NAME);
            entry.setTimeLocal(java.time.LocalDateTime.ofEpochSecond(time / 1000, 0, java.time.ZoneOffset.UTC));
            jar.putNextEntry(entry);
            jar.write(manifest.toByteArray());
        }
    }

    /** Lines of a manifest hold at most 72 bytes; all of these are ASCII. */
    private static void fold(String line, OutputStream out) throws IOException {
        String rest = line;
        while (rest.length() > 70) {
            out.write((rest.substring(0, 70) + "\n").getBytes(StandardCharsets.US_ASCII));
            rest = " " + rest.substring(70);
        }
        out.write((rest + "\n").getBytes(StandardCharsets.US_ASCII));
    }
}
