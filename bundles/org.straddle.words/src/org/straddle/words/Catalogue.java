package org.straddle.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.Enumeration;
import java.util.HashMap;
import java.util.Map;
import java.util.Properties;
import java.util.ResourceBundle;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The texts of a package, in the file {@code messages.properties} beside its classes (UTF-8, ICU message format with
 * named arguments). A file is read when the first text is asked for, a text is parsed when it is first said, and both
 * are kept. Another language is a file beside it, such as {@code messages_de.properties}; what it lacks is said in
 * English.
 *
 * <p>A text that is not there is shown as its key in angle brackets and never fails: a complaint must come through. The
 * architecture tests prove that no key and no argument is missing.
 */
public final class Catalogue {

    private static final Map<String, Catalogue> OPEN = new ConcurrentHashMap<>();

    private final Class<?> beside;
    private final String file;
    private final Language language;
    private final Map<String, Message> parsed = new ConcurrentHashMap<>();
    private volatile Map<String, String> texts;

    private Catalogue(Class<?> beside, String file, Language language) {
        this.beside = beside;
        this.file = file;
        this.language = language;
    }

    /** The texts of the package of a class, in the language chosen at the start. */
    public static Catalogue of(Class<?> beside) {
        return of(beside, "messages", Language.current());
    }

    /** The texts of a file of another name: {@code <file>.properties} beside a class. */
    public static Catalogue of(Class<?> beside, String file) {
        return of(beside, file, Language.current());
    }

    /** The same texts in another language. */
    public Catalogue in(Language other) {
        return other.equals(language) ? this : of(beside, file, other);
    }

    private static Catalogue of(Class<?> beside, String file, Language language) {
        String key = language.tag() + language.pseudo() + " " + beside.getPackageName() + "/" + file;
        return OPEN.computeIfAbsent(key, any -> new Catalogue(beside, file, language));
    }

    /** A text without arguments. */
    public String text(String key) {
        return message(key).print(Map.of());
    }

    /**
     * A text with its arguments.
     *
     * @param namesAndValues name, value, name, value …; see {@link Message} for what values may be
     */
    public String text(String key, Object... namesAndValues) {
        return message(key).print(named(namesAndValues));
    }

    /** A text whose arguments are at hand by their names. */
    public String text(String key, Map<String, ?> arguments) {
        return message(key).print(arguments);
    }

    /** What a constant of an enum is called: the text {@code TypeName.CONSTANT_NAME}. */
    public String text(Enum<?> constant) {
        return text(key(constant));
    }

    /** The same with arguments. */
    public String text(Enum<?> constant, Object... namesAndValues) {
        return text(key(constant), namesAndValues);
    }

    public boolean has(String key) {
        return texts().containsKey(key);
    }

    /** The texts as they stand, for libraries that fetch texts themselves; their own placeholders stay as they are. */
    public ResourceBundle asResourceBundle() {
        return new ResourceBundle() {

            @Override
            protected Object handleGetObject(String key) {
                return has(key) ? text(key) : null;
            }

            @Override
            public Enumeration<String> getKeys() {
                return Collections.enumeration(texts().keySet());
            }
        };
    }

    private static String key(Enum<?> constant) {
        return constant.getDeclaringClass().getSimpleName() + "." + constant.name();
    }

    private static Map<String, Object> named(Object[] namesAndValues) {
        Map<String, Object> arguments = new HashMap<>();
        for (int i = 0; i + 1 < namesAndValues.length; i += 2) {
            arguments.put((String) namesAndValues[i], namesAndValues[i + 1]);
        }
        return arguments;
    }

    private Message message(String key) {
        Message known = parsed.get(key);
        // Asked for by thousands: what would make a text is not made when it is there.
        return known != null ? known
                : parsed.computeIfAbsent(key, any -> Message.of(texts().getOrDefault(key, "<" + key + ">"), language));
    }

    private Map<String, String> texts() {
        Map<String, String> read = texts;
        if (read == null) {
            read = read(file);
            if (!language.isEnglish()) {
                read.putAll(read(file + "_" + language.tag()));
            }
            texts = read;
        }
        return read;
    }

    private Map<String, String> read(String name) {
        Map<String, String> read = new HashMap<>();
        try (InputStream in = beside.getResourceAsStream(name + ".properties")) {
            if (in != null) {
                Properties properties = new Properties();
                properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
                properties.stringPropertyNames().forEach(key -> read.put(key, properties.getProperty(key)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return read;
    }
}
