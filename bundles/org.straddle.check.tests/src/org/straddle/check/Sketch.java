package org.straddle.check;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.straddle.model.Bird;
import org.straddle.model.BirdElements;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Identified;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.StraddlePackage;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;
import org.straddle.sky.Window;
import org.straddle.sky.prediction.EarthOrientation;
import org.straddle.sky.prediction.PassSearch;

/**
 * An event in a few lines. It starts from a small world in which nothing is wrong; the lines change it.
 *
 * <pre>
 * A: S1 10:00-11:00 [Tern 10:20-10:30] [Gull pass2+0/+60]; S2 13:00-14:00   team A's lane: stops, turns in brackets
 * S1 markErrorM=30 squares=HP84,HP85      set features of the thing named S1
 * Tern -reports                           empty a feature
 * Tern +reports kind=heard                add a contained thing
 * +teams C number=3                       add a thing to the event
 * policies setUpMinutes=0                 and of the event and its policies
 * earth 2031-06-01/2031-06-20             invented Earth orientation data for these days, for an outlook
 * </pre>
 *
 * Times are UTC on the sketch's day; {@code 1d06:00} is a day later. {@code pass2+0/+60} is the second
 * pass over the stop's site, from its AOS to 60 s after its LOS.
 */
final class Sketch {

    static final LocalDate DAY = LocalDate.of(2031, 6, 21);

    /** Two teams, sites in three squares, birds that stand still above 20°W, and papers in order. */
    private static final String WORLD = """
            event zone=Europe/Oslo firstDay=2031-06-21 lastDay=2031-06-21
            +bases Home latitudeDeg=64.5 longitudeDeg=-20.6
            +operators Ann bands=2m,70cm
            +operators Bo
            +operators Cy bands=70cm
            +operators Di bands=2m
            +sites S1 latitudeDeg=64.5 longitudeDeg=-20.5 squares=HP94
            +sites S1b latitudeDeg=64.4 longitudeDeg=-20.4 squares=HP94
            +sites S2 latitudeDeg=64.5 longitudeDeg=-19.5 squares=IP04
            +sites L latitudeDeg=64.5 longitudeDeg=-20 squares=HP94,IP04 kind=line markErrorM=1
            +sites Far latitudeDeg=-64.5 longitudeDeg=160.5 squares=RC05
            """;

    /** Shared by all sketches, most of which have birds and sites in common: what one searched the next remembers. */
    private static final PassSearch SEARCH = new PassSearch();

    private static final Pattern LANE = Pattern.compile("(\\w+):(.*)");
    private static final Pattern STOP = Pattern.compile("\\s*(\\w+)\\s+(\\S+?)-(\\S+)\\s*((?:\\[[^]]*\\]\\s*)*)");
    private static final Pattern TURN = Pattern.compile(
            "\\[(\\w+) (?:pass(\\d+)([-+]\\d+)/([-+]\\d+)|(\\S+?)-(\\S+?))(?: @(\\S+))?\\]");

    private final LocalDate day;
    private final Event event = Fresh.event("Sketch");
    private final Map<String, Identified> named = new HashMap<>();
    private final List<String> lanes = new ArrayList<>();
    private Optional<EarthOrientation> orientation = Optional.empty();

    private Sketch(LocalDate day) {
        this.day = day;
    }

    static Event of(String lines) {
        return of(DAY, lines);
    }

    static Event of(LocalDate day, String lines) {
        return drawn(day, lines).event;
    }

    /** The event seen through what the lines say of the Earth. */
    static Outlook outlook(LocalDate day, String lines) {
        Sketch sketch = drawn(day, lines);
        return Outlook.of(sketch.event, sketch.search(), null);
    }

    Event event() {
        return event;
    }

    /** A search for passes by what the lines say of the Earth. */
    PassSearch search() {
        return orientation.map(PassSearch::new).orElse(SEARCH);
    }

    /** One more line; here {@code T1} is the first turn of the plan, and {@code Stop} and others the first of their kind. */
    void edit(String line) {
        List<Identified> turns = new ArrayList<>();
        event.eAllContents().forEachRemaining(thing -> {
            if (thing instanceof Turn turn) {
                named.put("T" + (turns.size() + 1), turn);
                turns.add(turn);
            } else if (thing instanceof Identified one) {
                named.putIfAbsent(thing.eClass().getName(), one);
            }
        });
        line(line);
    }

    static Sketch drawn(LocalDate day, String lines) {
        Sketch sketch = new Sketch(day);
        WORLD.lines().forEach(sketch::line);
        sketch.inventBirds();
        sketch.inventTeams();
        sketch.papersInOrder();
        lines.lines().map(String::strip).filter(line -> !line.isEmpty()).forEach(sketch::line);
        sketch.drawLanes();
        return sketch;
    }

    /** Rows of finals2000A in their columns, with the same values every day. */
    private static EarthOrientation turning(String[] days) {
        StringBuilder rows = new StringBuilder();
        LocalDate.parse(days[0]).datesUntil(LocalDate.parse(days[1]).plusDays(1))
                .forEach(date -> rows.append(String.format(Locale.ROOT, "%2d%2d%2d %d.00 I  0.100000 0.000031  0.300000"
                        + " 0.000025  I 0.0200000 0.0000042%n", date.getYear() % 100, date.getMonthValue(),
                        date.getDayOfMonth(), 40_587 + date.toEpochDay())));
        return EarthOrientation.read("finals2000A.invented", rows.toString().getBytes(StandardCharsets.US_ASCII));
    }

    private void inventBirds() {
        bird("Tern", 1, "mode=fm access=single_channel", Orbits.above(-20, 1, noon()));
        bird("Skua", 2, "mode=fm access=single_channel", Orbits.above(-21, 2, noon()));
        bird("Gull", 3, "mode=linear access=passband", Orbits.above(-19, 3, noon()));
        bird("Auk", 4, "mode=fm access=single_channel", Orbits.low(4, noon()));
    }

    private void bird(String name, int number, String features, BirdElements elements) {
        line("+birds " + name + " state=working catalogueNumber=" + number + " " + features);
        line(name + " +reports kind=two_way_contact at=06:00");
        line(name + " +uplink lowMhz=145.9 highMhz=145.9");
        line(name + " +downlink lowMhz=435.8 highMhz=435.8");
        ((Bird) named.get(name)).getElementSets().add(elements);
    }

    private void inventTeams() {
        line("+teams A number=1 operators=Ann,Bo");
        line("+teams B number=2 operators=Cy,Di");
        line("A +days from=06:00 until=22:00 start=Home end=Home");
        line("B +days from=06:00 until=22:00 start=Home end=Home");
    }

    private void papersInOrder() {
        for (String site : List.of("S1", "S1b", "S2", "L", "Far")) {
            line(site + " +visits date=" + day.minusDays(30) + " visitor=Ann");
            line(site + " +reviews date=" + day.minusDays(20) + " reviewer=Ann team=A second=Cy secondAt=" + day.minusDays(20) + "T18:00:00Z");
        }
        line("+kits Box");
        for (String item : List.of("radio", "antenna", "feedline", "power", "audio", "computer", "recorder",
                "navigation")) {
            line("Box +items " + item + " name=" + item + " role=" + item + " count=2");
        }
        line("Box +items vests name=vests role=safety safetyUse=high-visibility_vest vestClass=3 count=2");
        line("Box +items tape name=tape role=safety safetyUse=tape tapeM=50");
        line("Box +items cones name=cones role=safety safetyUse=cone_or_board count=4");
        line("Box +items aid name=aid role=safety safetyUse=first_aid_kit");
        line("Box +items can name=can role=comfort safetyUse=drinking_water waterLitres=20");
        line("A kits=Box");
        line("B kits=Box");
    }

    private Instant noon() {
        return instant("12:00");
    }

    private void line(String line) {
        Matcher lane = LANE.matcher(line);
        if (lane.matches()) {
            lanes.add(line);
            return;
        }
        String[] words = line.strip().split("\\s+");
        if (words[0].equals("earth")) {
            orientation = Optional.of(turning(words[1].split("/")));
            return;
        }
        EObject target = words[0].startsWith("+") ? event : thing(words[0]);
        for (int i = words[0].startsWith("+") ? 0 : 1; i < words.length; i++) {
            String word = words[i];
            if (word.startsWith("-")) {
                target.eUnset(feature(target, word.substring(1)));
            } else if (word.startsWith("+")) {
                while (target.eClass().getEStructuralFeature(word.substring(1)) == null) {
                    target = target.eContainer();
                }
                target = add(target, (EReference) feature(target, word.substring(1)));
                if (i + 1 < words.length && !words[i + 1].contains("=") && !words[i + 1].startsWith("+")) {
                    name(target, words[++i]);
                }
            } else {
                String[] pair = word.split("=", 2);
                set(target, feature(target, pair[0]), pair[1]);
            }
        }
    }

    private EObject thing(String name) {
        return switch (name) {
            case "event" -> event;
            case "plan" -> event.getPlan();
            case "policies" -> event.getPolicies();
            case "EnteredDrive" -> event.getEnteredDrives().get(0);
            default -> {
                if (!named.containsKey(name)) {
                    throw new IllegalArgumentException("Nothing is named " + name);
                }
                yield named.get(name);
            }
        };
    }

    private void name(EObject object, String name) {
        named.put(name, (Identified) object);
        set(object, feature(object, "name"), name);
    }

    private static EStructuralFeature feature(EObject object, String name) {
        EStructuralFeature feature = object.eClass().getEStructuralFeature(name);
        if (feature == null) {
            throw new IllegalArgumentException(object.eClass().getName() + " has no " + name);
        }
        return feature;
    }

    @SuppressWarnings("unchecked")
    private static EObject add(EObject target, EReference feature) {
        EClass kind = feature.getEReferenceType();
        EObject made = StraddlePackage.Literals.IDENTIFIED.isSuperTypeOf(kind) ? Fresh.of(kind)
                : EcoreUtil.create(kind);
        if (feature.isMany()) {
            ((List<EObject>) target.eGet(feature)).add(made);
        } else {
            target.eSet(feature, made);
        }
        return made;
    }

    private void set(EObject target, EStructuralFeature feature, String text) {
        if (feature.isMany()) {
            List<Object> values = new ArrayList<>();
            for (String part : text.split(",")) {
                values.add(value(feature, part));
            }
            target.eSet(feature, values);
        } else {
            target.eSet(feature, value(feature, text));
        }
    }

    private Object value(EStructuralFeature feature, String text) {
        if (feature instanceof EReference) {
            return thing(text);
        }
        if (((EAttribute) feature).getEAttributeType() == StraddlePackage.Literals.INSTANT) {
            return instant(text);
        }
        String literal = text.replace('_', ' ').replace("two way contact", "two-way contact made");
        return EcoreUtil.createFromString(((EAttribute) feature).getEAttributeType(),
                feature.getEType().getName().equals("EString") ? text : literal);
    }

    private Instant instant(String text) {
        if (text.contains("T")) {
            return Instant.parse(text);
        }
        int days = text.contains("d") ? Integer.parseInt(text.substring(0, text.indexOf('d'))) : 0;
        String clock = text.substring(text.indexOf('d') + 1);
        return Instant.parse(day.plusDays(days) + "T" + (clock.length() == 5 ? clock + ":00" : clock) + "Z");
    }

    /** Passes are looked up after all else is set, because they depend on it. */
    private void drawLanes() {
        Outlook outlook = lanes.stream().anyMatch(lane -> lane.contains("pass")) ? Outlook.of(event, SEARCH, null) : null;
        for (String line : lanes) {
            Matcher lane = LANE.matcher(line);
            lane.matches();
            for (String part : lane.group(2).split(";")) {
                event.getPlan().getStops().add(stop((Team) thing(lane.group(1)), part, outlook));
            }
        }
    }

    private Stop stop(Team team, String text, Outlook outlook) {
        Matcher matcher = STOP.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException("Not a stop: " + text);
        }
        Stop stop = Fresh.stop(team, (Site) thing(matcher.group(1)), instant(matcher.group(2)), instant(matcher.group(3)));
        Matcher turn = TURN.matcher(matcher.group(4));
        while (turn.find()) {
            stop.getTurns().add(turn(turn, stop.getSite(), outlook));
        }
        return stop;
    }

    private Turn turn(Matcher text, Site site, Outlook outlook) {
        Turn turn = Fresh.turn();
        Bird bird = (Bird) thing(text.group(1));
        turn.setBird(bird);
        if (text.group(2) == null) {
            turn.setStart(instant(text.group(5)));
            turn.setEnd(instant(text.group(6)));
        } else {
            Window pass = outlook.passes(site, bird).get(Integer.parseInt(text.group(2)) - 1).pass().window();
            turn.setStart(pass.start().plus(Duration.ofSeconds(Integer.parseInt(text.group(3)))));
            turn.setEnd(pass.end().plus(Duration.ofSeconds(Integer.parseInt(text.group(4)))));
        }
        turn.setDownlinkMhz(text.group(7) == null ? 0 : Double.parseDouble(text.group(7)));
        return turn;
    }
}
