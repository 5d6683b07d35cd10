package org.straddle.packaging;

import java.io.IOException;
import java.io.File;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import picocli.CommandLine;

/** What lies beside the program: icons, man pages, completion. */
final class Share {

    private Share() {
    }

    static void make(Path product, Path icons, Path target, long time) throws IOException, ReflectiveOperationException {
        Icons pictures = new Icons(icons);
        for (int edge : new int[] {16, 24, 32, 48, 64, 128, 256}) {
            Path folder = Files.createDirectories(target.resolve("icons/hicolor/" + edge + "x" + edge + "/apps"));
            Files.copy(pictures.png(edge), folder.resolve("straddle.png"));
        }
        Path scalable = Files.createDirectories(target.resolve("icons/hicolor/scalable/apps"));
        Files.copy(icons.resolve("straddle.svg"), scalable.resolve("straddle.svg"));
        Files.write(target.resolve("straddle.ico"), pictures.ico());
        Files.write(target.resolve("straddle.icns"), pictures.icns());
        new Manual(commandLine(product), time).write(target.resolve("man/man1"),
                target.resolve("bash-completion/completions/straddle"));
    }

    private static CommandLine commandLine(Path product) throws IOException, ReflectiveOperationException {
        List<URL> path = new ArrayList<>();
        for (Plugin plugin : ClassPath.of(Plugin.in(product.resolve("plugins")))) {
            path.add(new File(plugin.path().toString()).toURI().toURL());
        }
        // Picocli is this program's own, so that it can read what the product's commands say of themselves.
        URLClassLoader loader = new URLClassLoader(path.toArray(URL[]::new), Share.class.getClassLoader());
        return (CommandLine) loader.loadClass("org.straddle.cli.Main").getMethod("commandLine").invoke(null);
    }
}
