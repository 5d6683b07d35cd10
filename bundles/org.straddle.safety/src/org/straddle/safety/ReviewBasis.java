package org.straddle.safety;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.straddle.model.Event;
import org.straddle.model.KitItem;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Visit;
import org.straddle.outlook.Outlook;
import org.straddle.words.Catalogue;

/**
 * What lies under a review: the visit, which teams come on which days, what their kits raise and transmit, and what
 * the forecasts of those days warn of. A review keeps a digest of each, so that it falls when one changes and can say which.
 */
final class ReviewBasis {

    private static final Catalogue TEXTS = Catalogue.of(ReviewBasis.class);

    private static final ForecastWarnings CALM = new ForecastWarnings(HeatLevel.NONE, ColdLevel.NONE, WindLevel.NONE, false);

    private static final int DIGITS = 16;

    /** What a review rests on. */
    enum ReviewPart {
        VISIT, PLAN, KIT, FORECAST
    }

    private ReviewBasis() {
    }

    /** As a review keeps it: a word for the part and a digest. */
    static List<String> of(Site site, Optional<Visit> visit) {
        return Stream.of(ReviewPart.values()).map(part -> part.name() + " " + digest(facts(part, site, visit))).toList();
    }

    /** What has changed under a review, in words; nothing for one that was signed without a basis. */
    static List<String> changed(Review review, Site site, Optional<Visit> visit) {
        if (review.getBasis().isEmpty()) {
            return List.of();
        }
        List<String> now = of(site, visit);
        return Stream.of(ReviewPart.values()).filter(part -> !now.get(part.ordinal()).equals(kept(review, part)))
                .map(part -> TEXTS.text(part)).toList();
    }

    private static String kept(Review review, ReviewPart part) {
        return review.getBasis().stream().filter(line -> line.startsWith(part.name() + " ")).findFirst().orElse("");
    }

    private static List<Object> facts(ReviewPart part, Site site, Optional<Visit> visit) {
        List<Stop> stops = site.eContainer() instanceof Event event && event.getPlan() != null ? event.getPlan().getStops().stream()
                .filter(stop -> stop.getSite() == site && stop.getTeam() != null && stop.getArrival() != null).toList() : List.of();
        return switch (part) {
            case VISIT -> visit.map(seen -> dangers(site, seen)).orElse(List.of());
            case PLAN -> sorted(stops.stream().map(stop -> stop.getTeam().getId() + " " + day(site, stop)));
            case KIT -> sorted(stops.stream().flatMap(stop -> stop.getTeam().getKits().stream()).distinct()
                    .flatMap(kit -> kit.getItems().stream()).filter(ReviewBasis::canHurt)
                    .map(item -> item.getRaisedM() + " " + item.getTransmitsW() + " " + item.getGainDbi()));
            case FORECAST -> sorted(stops.stream().map(stop -> day(site, stop)).distinct().flatMap(day -> warnings(site, day)));
        };
    }

    private static boolean canHurt(KitItem item) {
        return item.getRaisedM() > 0 || item.getTransmitsW() > 0 || item.getGainDbi() != 0;
    }

    /** What the forecast warns of: a degree more or less is nothing that was reviewed. */
    private static Stream<String> warnings(Site site, LocalDate day) {
        ForecastWarnings warnings = ForecastWarnings.of((Event) site.eContainer(), site, day, Optional.empty());
        return warnings.equals(CALM) ? Stream.empty() : Stream.of(day + " " + warnings);
    }

    private static LocalDate day(Site site, Stop stop) {
        ZoneId zone = site.eContainer() instanceof Event event ? Outlook.zoneOf(event) : ZoneOffset.UTC;
        return stop.getArrival().atZone(zone).toLocalDate();
    }

    private static List<Object> dangers(Site site, Visit visit) {
        List<Object> facts = new ArrayList<>(Arrays.asList(site.getMarkErrorM(), visit.getRoadSpeedKmh(), visit.getMastLimitM()));
        visit.getHazards().forEach(hazard -> facts.addAll(Arrays.asList(hazard.getKind(), hazard.getDescription(), hazard.getDistanceM(),
                hazard.getMeasure(), hazard.getSeverityLeft(), hazard.getProbabilityLeft())));
        visit.getOverheadLines().forEach(wires -> facts.addAll(Arrays.asList(wires.getDistanceM(), wires.getHeightM(),
                wires.getVoltageKv(), wires.isVoltageFromOwner())));
        return facts;
    }

    private static List<Object> sorted(Stream<String> facts) {
        return List.copyOf(facts.sorted().toList());
    }

    private static String digest(List<Object> facts) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(facts.toString().getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash).substring(0, DIGITS);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
