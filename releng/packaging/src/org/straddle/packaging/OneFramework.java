package org.straddle.packaging;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

import org.eclipse.core.runtime.adaptor.EclipseStarter;

/** Runs a list of commands in one start of the framework: {@code OneFramework APPLICATION CONFIGURATION SAID <COMMANDS}. */
final class OneFramework {

    private OneFramework() {
    }

    public static void main(String[] arguments) throws Exception {
        Path application = Path.of(arguments[0]);
        Path configuration = Files.createDirectories(Path.of(arguments[1]));
        CommandList commands = CommandList.read(System.in);
        Files.copy(application.resolve("configuration/config.ini"), configuration.resolve("config.ini"));
        Map<String, String> properties = new HashMap<>();
        properties.put("osgi.install.area", application.toUri().toString());
        properties.put("osgi.configuration.area", configuration.toUri().toString());
        properties.put("osgi.configuration.cascaded", "false");
        properties.put("osgi.framework.useSystemProperties", "true");
        EclipseStarter.setInitialProperties(properties);
        EclipseStarter.startup(new String[] {"-data", "@none", "-nosplash", "-application", "org.straddle.cli.application"}, null);
        commands.run(EclipseStarter::run, Path.of(arguments[2]));
        EclipseStarter.shutdown();
        System.exit(0);
    }
}
