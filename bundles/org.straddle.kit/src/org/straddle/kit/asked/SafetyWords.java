package org.straddle.kit.asked;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.straddle.model.KitItem;
import org.straddle.model.Role;
import org.straddle.model.SafetyUse;
import org.straddle.words.Catalogue;

/** Finds safety things in what people wrote: in the measure of a visit, and in the name of an item that does not say its use. */
final class SafetyWords {

    private static final Catalogue TEXTS = Catalogue.of(SafetyWords.class);

    /** In this order, so that a life vest is no vest. */
    private static final List<SafetyUse> USES = List.of(SafetyUse.LIFE_VEST, SafetyUse.VEST, SafetyUse.TAPE, SafetyUse.CONE,
            SafetyUse.FLAG_POLE, SafetyUse.FIRST_AID, SafetyUse.WATER);
    private static final Map<SafetyUse, Pattern> PATTERNS = patterns();

    private SafetyWords() {
    }

    /** A thing that a measure names; without a count it is one, or one for each person. */
    record Named(SafetyUse use, Optional<Integer> count) {
    }

    private static Map<SafetyUse, Pattern> patterns() {
        Map<SafetyUse, String> words = Map.of(SafetyUse.LIFE_VEST, TEXTS.text("words.lifeVest"), SafetyUse.VEST, TEXTS.text("words.vest"),
                SafetyUse.TAPE, TEXTS.text("words.tape"), SafetyUse.CONE, TEXTS.text("words.cone"), SafetyUse.FLAG_POLE,
                TEXTS.text("words.flagPole"), SafetyUse.FIRST_AID, TEXTS.text("words.firstAid"), SafetyUse.WATER,
                TEXTS.text("words.water"));
        Map<SafetyUse, Pattern> patterns = new EnumMap<>(SafetyUse.class);
        words.forEach((use, list) -> patterns.put(use, Pattern.compile("(?:\\b(\\d{1,3})\\s*(?:[x×]\\s*)?(?:\\p{L}+\\s+)?)?\\b(?:"
                + Stream.of(list.split(",")).map(String::strip).map(Pattern::quote).collect(Collectors.joining("|")) + ")\\b",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS)));
        return patterns;
    }

    static List<Named> in(String measure) {
        List<Named> named = new ArrayList<>();
        String rest = measure;
        for (SafetyUse use : USES) {
            Matcher found = PATTERNS.get(use).matcher(rest);
            if (found.find()) {
                named.add(new Named(use, Optional.ofNullable(found.group(1)).map(Integer::valueOf)));
                rest = found.replaceAll(" ");
            }
        }
        return named;
    }

    static SafetyUse useOf(KitItem item) {
        if (item.getSafetyUse() != SafetyUse.NONE || item.getName() == null || item.getRole() == Role.RADIO
                || item.getRole() == Role.ANTENNA || item.getRole() == Role.FEEDLINE) {
            return item.getSafetyUse();
        }
        return in(item.getName()).stream().map(Named::use).findFirst().orElse(SafetyUse.NONE);
    }
}
