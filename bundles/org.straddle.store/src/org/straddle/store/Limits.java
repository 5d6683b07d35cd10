package org.straddle.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.straddle.model.Event;
import org.straddle.model.FigureRange;
import org.straddle.model.Policies;
import org.straddle.model.naming.PolicyText;
import org.straddle.words.Catalogue;

/**
 * What a value of an event may be at all, for every attribute of the model: what lies outside no event needs, and no
 * computation can bear. It is looked at once, when an event is opened, and before it is saved, so nothing else has to
 * expect an instant a thousand million years away. What is merely wrong is left to the checks, which can say more.
 */
final class Limits {

    private static final Catalogue TEXTS = Catalogue.of(Limits.class);

    private static final LocalDate FIRST_DAY = LocalDate.of(1900, 1, 1);
    private static final LocalDate LAST_DAY = LocalDate.of(2200, 1, 1);
    private static final Instant FIRST = Instant.parse("1900-01-01T00:00:00Z");
    private static final Instant LAST = Instant.parse("2200-01-01T00:00:00Z");

    private static final int LONGEST_TEXT = 100_000;
    private static final int LONGEST_OUTLINE = 2_000_000;
    /** A multipolygon needs three. */
    private static final int DEEPEST_OUTLINE = 4;
    private static final int MOST_VALUES = 10_000;
    private static final int MOST_PARTS = 100_000;

    /** A number from least to most; tiny ones but 0 itself are refused, because one divides by them. */
    private record Range(double least, double most) {

        private static final double TINY = 1e-30;

        static Range of(double least, double most) {
            return new Range(least, most);
        }

        boolean holds(double value) {
            return value >= least && value <= most && (value == 0 || Math.abs(value) >= TINY);
        }

        String words() {
            return TEXTS.text("limits.allowed", "least", number(least), "most", number(most));
        }
    }

    private static final Range DECIMAL = Range.of(-1e9, 1e9);
    private static final Range WHOLE = Range.of(-1e9, 1e9);
    private static final Range COUNTED = Range.of(0, 1e6);

    /** By the name of the feature, with its class where the name alone says too little; figures of policies have their own. */
    private static final Map<String, Range> RANGES = Map.ofEntries(
            Map.entry("latitudeDeg", Range.of(-90, 90)), Map.entry("longitudeDeg", Range.of(-180, 180)),
            Map.entry("altitudeM", Range.of(-20_000, 100_000)),
            Map.entry("azimuthDeg", Range.of(-360, 360)), Map.entry("bearingDeg", Range.of(-360, 360)),
            Map.entry("elevationDeg", Range.of(-90, 90)), Map.entry("minutes", COUNTED),
            Map.entry("Revision.number", COUNTED), Map.entry("Team.number", COUNTED), Map.entry("PublishedTurn.team", COUNTED),
            Map.entry("eccentricity", Range.of(0, 1)), Map.entry("inclinationDeg", Range.of(-360, 360)),
            Map.entry("meanMotionRevPerDay", Range.of(0, 100)), Map.entry("raanDeg", Range.of(-720, 720)),
            Map.entry("argumentOfPerigeeDeg", Range.of(-720, 720)), Map.entry("meanAnomalyDeg", Range.of(-720, 720)));

    private Limits() {
    }

    /** @throws EventFolderException naming file, object and feature, and what is allowed */
    static void require(Event event) throws EventFolderException {
        require((EObject) event);
        for (Iterator<EObject> all = event.eAllContents(); all.hasNext();) {
            require(all.next());
        }
    }

    /** The same for the objects of one file. */
    static void require(EventResource file) throws EventFolderException {
        for (Iterator<EObject> all = EcoreUtil.getAllProperContents(file, false); all.hasNext();) {
            require(all.next());
        }
    }

    private static void require(EObject object) throws EventFolderException {
        for (EAttribute attribute : object.eClass().getEAllAttributes()) {
            Object value = object.eGet(attribute);
            List<?> values = attribute.isMany() ? (List<?>) value : value == null ? List.of() : List.of(value);
            if (values.size() > MOST_VALUES) {
                throw refuse(object, attribute, TEXTS.text("limits.hasValuesAllowed", "values", values.size(),
                        "mostValues", MOST_VALUES));
            }
            for (Object each : values) {
                Optional<String> trouble = trouble(attribute, each);
                if (trouble.isPresent()) {
                    throw refuse(object, attribute, trouble.get());
                }
            }
        }
        for (EReference part : object.eClass().getEAllReferences()) {
            if (part.isMany() && ((List<?>) object.eGet(part)).size() > MOST_PARTS) {
                throw refuse(object, part, TEXTS.text("limits.hasMoreParts", "mostParts", MOST_PARTS));
            }
        }
    }

    private static Optional<String> trouble(EAttribute attribute, Object value) {
        if (value instanceof Instant at) {
            return at.isBefore(FIRST) || at.isAfter(LAST) ? Optional.of(TEXTS.text("limits.allowedYears",
                    "shortened", shortened(at.toString()), "year", FIRST_DAY.getYear(),
                    "year2", LAST_DAY.getYear())) : Optional.empty();
        } else if (value instanceof LocalDate day) {
            return day.isBefore(FIRST_DAY) || day.isAfter(LAST_DAY) ? Optional.of(TEXTS.text("limits.allowedDays",
                    "day", day, "year", FIRST_DAY.getYear(), "year2", LAST_DAY.getYear())) : Optional.empty();
        } else if (value instanceof Double number) {
            return outside(range(attribute, DECIMAL), number);
        } else if (value instanceof Integer number) {
            return outside(range(attribute, WHOLE), number);
        } else if (value instanceof String text) {
            return attribute.getName().equals("outline") ? outline(text) : longer(text, LONGEST_TEXT);
        }
        // What is left are words of a list and yes or no.
        return Optional.empty();
    }

    private static Range range(EAttribute attribute, Range otherwise) {
        Optional<Range> figure = FigureRange.of(attribute).map(declared -> Range.of(declared.least(), declared.most()));
        if (figure.isPresent()) {
            return figure.get();
        }
        Range own = RANGES.get(attribute.getEContainingClass().getName() + "." + attribute.getName());
        return own != null ? own : RANGES.getOrDefault(attribute.getName(), otherwise);
    }

    private static Optional<String> outside(Range range, double value) {
        return range.holds(value) ? Optional.empty() : Optional.of(TEXTS.text("limits.is", "number", number(value),
                "words", range.words()));
    }

    private static Optional<String> longer(String text, int longest) {
        return text.length() <= longest ? Optional.empty()
                : Optional.of(TEXTS.text("limits.hasCharactersAllowed", "text", text.length(), "longest", longest));
    }

    private static Optional<String> outline(String text) {
        int depth = 0;
        int deepest = 0;
        for (int i = 0; i < text.length(); i++) {
            depth += text.charAt(i) == '(' ? 1 : text.charAt(i) == ')' ? -1 : 0;
            deepest = Math.max(deepest, depth);
        }
        return deepest <= DEEPEST_OUTLINE ? longer(text, LONGEST_OUTLINE)
                : Optional.of(TEXTS.text("limits.hasParenthesesNested", "deepest", deepest,
                        "deepestOutline", DEEPEST_OUTLINE));
    }

    private static String number(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e10 ? Long.toString((long) value)
                : Double.toString(value);
    }

    private static String shortened(String text) {
        return text.length() <= 40 ? text : text.substring(0, 40) + "…";
    }

    private static EventFolderException refuse(EObject object, EStructuralFeature feature, String trouble) {
        String file = object.eResource() instanceof EventResource resource ? resource.name() : Layout.EVENT;
        String called = object instanceof Policies ? TEXTS.text("limits.policy", "feature", feature.getName(),
                "label", PolicyText.of(feature).label(), "unit", PolicyText.of(feature).unit()) : feature.getName();
        return EventFolderException.of(TEXTS.text("limits.its", "shortened", shortened(FitToWrite.label(object)),
                "feature", called, "trouble", trouble),
                file, TEXTS.text("limits.correctValueRestore"));
    }
}
