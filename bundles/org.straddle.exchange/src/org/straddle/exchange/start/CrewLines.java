package org.straddle.exchange.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.straddle.model.Base;
import org.straddle.model.Fresh;
import org.straddle.model.Operator;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.outlook.things.BandName;
import org.straddle.words.Catalogue;

/** Operators, {@code CALL NAME, BAND BAND}, and teams of them, {@code NAME: CALL CALL @ BASE > BASE}. */
final class CrewLines {

    private static final Catalogue TEXTS = Catalogue.of(CrewLines.class);

    private static final Pattern CALL_SIGN = Pattern.compile("(?=.*\\d)(?=.*\\p{L})[\\p{L}\\d/]{3,20}");
    private static final Pattern OPERATOR = Pattern.compile("(\\S+)\\s*([^,;]*)(?:[,;](.*))?");
    private static final Pattern TEAM = Pattern.compile("([^:@]{1,200}?)\\s*(?::([^@]*))?(?:@([^>]*)(?:>(.*))?)?");

    private CrewLines() {
    }

    static ReadLines<Operator> operators(String text) {
        return ReadLines.of(text, CrewLines::operator);
    }

    private static ReadLines.Understood<Operator> operator(String line) {
        Matcher parts = OPERATOR.matcher(line);
        if (!parts.matches() || !CALL_SIGN.matcher(stripped(parts.group(1))).matches()) {
            throw new IllegalArgumentException(TEXTS.text("crewLines.operator.form"));
        }
        Operator operator = Fresh.operator();
        operator.setCallSign(stripped(parts.group(1)).toUpperCase(Locale.ROOT));
        operator.setName(parts.group(2).isBlank() ? null : parts.group(2).strip());
        operator.getBands().addAll(bands(parts.group(3) == null ? "" : parts.group(3)));
        return new ReadLines.Understood<>(operator, TEXTS.text("crewLines.operator", "call", operator.getCallSign(),
                "name", operator.getName() == null ? "none" : operator.getName(), "bands", operator.getBands(),
                "count", operator.getBands().size()));
    }

    /** "Q0AAR," is a call sign too. */
    private static String stripped(String call) {
        return call.replaceAll("[,;]+$", "");
    }

    private static List<String> bands(String text) {
        List<String> bands = new ArrayList<>();
        for (String word : text.replaceAll("(\\d)\\s+(m|cm|mm)\\b", "$1$2").split("[\\s,;]+")) {
            if (!word.isEmpty()) {
                bands.add(BandName.of(word).orElseThrow(() -> new IllegalArgumentException(TEXTS.text("crewLines.band", "word", word))));
            }
        }
        return bands;
    }

    /** Numbered in their order; days are not theirs to know. The start and end of their first day carries the bases. */
    static ReadLines<Team> teams(String text, List<Operator> operators, List<Base> bases) {
        int[] number = {0};
        return ReadLines.of(text, line -> team(line, ++number[0], operators, bases));
    }

    private static ReadLines.Understood<Team> team(String line, int number, List<Operator> operators, List<Base> bases) {
        Matcher parts = TEAM.matcher(line);
        if (!parts.matches()) {
            throw new IllegalArgumentException(TEXTS.text("crewLines.team.form"));
        }
        Team team = Fresh.team();
        team.setNumber(number);
        team.setName(parts.group(1).strip());
        team.setVehicle(StraddleFactory.eINSTANCE.createVehicle());
        for (String call : (parts.group(2) == null ? "" : parts.group(2)).split("[\\s,;]+")) {
            if (!call.isEmpty()) {
                team.getOperators().add(operators.stream().filter(one -> one.getCallSign().equalsIgnoreCase(call)).findFirst()
                        .orElseThrow(() -> new IllegalArgumentException(TEXTS.text("crewLines.team.stranger", "call", call))));
            }
        }
        Optional<Base> start = base(parts.group(3), bases);
        Optional<Base> end = parts.group(4) == null ? start : base(parts.group(4), bases);
        team.getDays().add(StraddleFactory.eINSTANCE.createTeamDay());
        start.ifPresent(team.getDays().get(0)::setStart);
        end.ifPresent(team.getDays().get(0)::setEnd);
        return new ReadLines.Understood<>(team, TEXTS.text("crewLines.team", "number", number, "name", team.getName(),
                "calls", team.getOperators().stream().map(Operator::getCallSign).toList(), "count", team.getOperators().size(),
                "start", start.map(Base::getName).orElse("none"), "end", end.map(Base::getName).orElse("none"),
                "same", start.equals(end)));
    }

    /** The one that is named, or the only one there is when none is. */
    private static Optional<Base> base(String name, List<Base> bases) {
        if (name == null || name.isBlank()) {
            return bases.size() == 1 ? Optional.of(bases.get(0)) : Optional.empty();
        }
        return Optional.of(bases.stream().filter(base -> base.getName().equalsIgnoreCase(name.strip())).findFirst().orElseThrow(() ->
                new IllegalArgumentException(TEXTS.text("crewLines.team.noBase", "name", name.strip()))));
    }
}
