package org.straddle.safety.explain;

import java.util.Set;

import org.straddle.words.Catalogue;

/** Words figures: each has a name, a sentence and a source under one key. */
final class FigureWords {

    private static final Catalogue TEXTS = Catalogue.of(FigureWords.class);

    /** Those that hang on weather, sun, radio or plan. */
    private static final Set<String> OF_THE_DAY = Set.of("radio", "heat", "chill", "wind", "thunder", "sun", "crossing", "driving", "duty", "country");

    private FigureWords() {
    }

    static Figure known(String key, Object... arguments) {
        return new Figure(TEXTS.text("what." + key), TEXTS.text("known." + key, arguments), TEXTS.text("source." + key), true,
                OF_THE_DAY.contains(key));
    }

    static Figure refused(String key, String why, Object... arguments) {
        return new Figure(TEXTS.text("what." + key), TEXTS.text("refused." + why, arguments), TEXTS.text("source." + key), false,
                OF_THE_DAY.contains(key));
    }
}
