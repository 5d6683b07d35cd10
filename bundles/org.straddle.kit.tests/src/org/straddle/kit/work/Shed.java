package org.straddle.kit.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Gear in a few words, parted by semicolons: {@code name xN !needed tx@2m rx@70cm ant@2m,70cm needs:push_to_talk=K2 duplex
 * fm ->original 5c 300g}; functions by the first letters of their names, a fit after "=".
 */
final class Shed {

    private Shed() {
    }

    static List<Gear> of(String text) {
        return text.isBlank() ? List.of() : Stream.of(text.split(";")).map(String::strip).map(Shed::gear).toList();
    }

    private static Gear gear(String text) {
        String[] words = text.split("\\s+");
        List<Ability> gives = new ArrayList<>();
        List<Ability> needs = new ArrayList<>();
        Set<Work> works = new java.util.HashSet<>();
        int pieces = 1;
        long cents = 0;
        long grams = 0;
        boolean needed = false;
        boolean duplex = false;
        Optional<String> spareFor = Optional.empty();
        for (String word : List.of(words).subList(1, words.length)) {
            if (word.equals("!")) {
                needed = true;
            } else if (word.equals("duplex")) {
                duplex = true;
            } else if (word.startsWith("->")) {
                spareFor = Optional.of(word.substring(2));
            } else if (word.matches("x\\d+")) {
                pieces = Integer.parseInt(word.substring(1));
            } else if (word.matches("\\d+c")) {
                cents = Long.parseLong(word.replace("c", ""));
            } else if (word.matches("\\d+g")) {
                grams = Long.parseLong(word.replace("g", ""));
            } else if (word.startsWith("needs:")) {
                needs.add(ability(word.substring(6)));
            } else if (Stream.of(Work.values()).anyMatch(work -> work.name().equalsIgnoreCase(word))) {
                works.add(Work.valueOf(word.toUpperCase(Locale.ROOT)));
            } else {
                gives.add(ability(word));
            }
        }
        return new Gear(words[0], words[0], pieces, gives, needs, duplex, works, needed, spareFor, cents, grams);
    }

    private static Ability ability(String word) {
        String[] fit = word.split("=");
        String[] bands = fit[0].split("@");
        Function function = Stream.of(Function.values())
                .filter(each -> each.name().toLowerCase(Locale.ROOT).startsWith(switch (bands[0]) {
                    case "tx" -> "transmit";
                    case "rx" -> "receive";
                    default -> bands[0];
                })).findFirst().orElseThrow();
        return new Ability(function, bands.length > 1 ? Set.of(bands[1].split(",")) : Set.of(),
                fit.length > 1 ? fit[1] : "");
    }

    /** "a b; a+c": single points, then pairs, each in order of names. */
    static String cuts(Answer answer) {
        String single = String.join(" ", answer.single().stream().map(Gear::name).sorted().toList());
        String pairs = String.join(" ", answer.pairs().stream()
                .map(pair -> String.join("+", pair.gear().stream().map(Gear::name).sorted().toList())).sorted().toList());
        return pairs.isEmpty() ? single : single + "; " + pairs;
    }
}
