package org.straddle.exchange.start;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.straddle.grid.Square;
import org.straddle.grid.Squares;
import org.straddle.model.Demand;
import org.straddle.model.StraddleFactory;
import org.straddle.words.Catalogue;

/** Which squares chasers still need: {@code SQUARE SQUARE PERCENT}. */
final class DemandLines {

    private static final Catalogue TEXTS = Catalogue.of(DemandLines.class);

    private static final Pattern LINE = Pattern.compile("(.*?)[\\s,;:]+(\\d{1,3}(?:[.,]\\d{1,3})?)\\s*%?");

    private DemandLines() {
    }

    static ReadLines<List<Demand>> read(String text) {
        return ReadLines.of(text, line -> {
            Matcher parts = LINE.matcher(line);
            if (!parts.matches()) {
                throw new IllegalArgumentException(TEXTS.text("demandLines.form"));
            }
            double percent = Double.parseDouble(parts.group(2).replace(',', '.'));
            if (percent > 100) {
                throw new IllegalArgumentException(TEXTS.text("demandLines.percent"));
            }
            List<Square> squares = Squares.parse(parts.group(1));
            if (squares.isEmpty()) {
                throw new IllegalArgumentException(TEXTS.text("demandLines.form"));
            }
            return new ReadLines.Understood<>(squares.stream().map(square -> demand(square, percent)).toList(),
                    TEXTS.text("demandLines.told", "squares", squares.stream().map(Square::name).toList(), "percent", percent));
        });
    }

    private static Demand demand(Square square, double percent) {
        Demand demand = StraddleFactory.eINSTANCE.createDemand();
        demand.setSquare(square.name());
        demand.setSharePercent(percent);
        return demand;
    }
}
