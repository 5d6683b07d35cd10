package org.straddle.ui.things;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Objects;

import org.eclipse.emf.ecore.EObject;
import org.straddle.model.Bird;
import org.straddle.model.Kit;
import org.straddle.model.Operator;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.model.naming.Naming;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/** A thing on a line of a tree or list: its name, and a quiet addition behind it, such as squares or times. */
public final class ThingLine {

    private static final Catalogue TEXTS = Catalogue.of(ThingLine.class);

    private ThingLine() {
    }

    /** A turn stands under its stop, so its bird is name enough. */
    public static String name(EObject thing) {
        return thing instanceof Turn turn && turn.getBird() != null ? Naming.name(turn.getBird()) : Naming.name(thing);
    }

    /** May be empty. */
    public static String detail(EObject thing, ZoneId zone) {
        if (thing instanceof Site site) {
            return String.join(" ", site.getSquares());
        } else if (thing instanceof Bird bird) {
            return Naming.of(bird.getState());
        } else if (thing instanceof Operator operator) {
            return Naming.name(operator).equals(operator.getCallSign()) ? "" : Objects.requireNonNullElse(operator.getCallSign(), "");
        } else if (thing instanceof Kit kit) {
            return TEXTS.text("thingLine.items", "count", kit.getItems().size());
        } else if (thing instanceof Stop stop) {
            return during(stop.getArrival(), stop.getDeparture(), zone);
        } else if (thing instanceof Turn turn) {
            return during(turn.getStart(), turn.getEnd(), zone);
        }
        return "";
    }

    private static String during(Instant start, Instant end, ZoneId zone) {
        TimeText times = TimeText.of(zone);
        return start == null ? TEXTS.text("thingLine.notime") : end == null ? times.at(start) : times.during(start, end);
    }
}
