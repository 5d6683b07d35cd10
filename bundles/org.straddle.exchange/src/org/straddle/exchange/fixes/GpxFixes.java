package org.straddle.exchange.fixes;

import java.io.IOException;
import java.io.InputStream;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import org.straddle.exchange.MapSource;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.XmlReading;
import org.straddle.exchange.XmlRefusal;
import org.straddle.grid.GeoPosition;
import org.straddle.words.Catalogue;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * Every waypoint and track point of a GPX file with its time. The format is on WGS 84 by definition. Its elevation is
 * above the sea, so a height above the ellipsoid is known only where the file also gives that of the geoid; an error
 * in metres it does not give at all.
 */
final class GpxFixes extends XmlReading {

    private static final Catalogue TEXTS = Catalogue.of(GpxFixes.class);

    private static final int DEEPEST = 64;
    private static final int MOST = 500_000;
    private static final int LONGEST_TEXT = 64;
    private final MapSource source;
    private final List<FixLog.Reading> readings = new ArrayList<>();
    private int depth;
    private int withoutFix;
    private int withoutTime;
    private int pointDepth;
    private GeoPosition position;
    private final Map<String, String> parts = new HashMap<>();
    private StringBuilder text;

    private GpxFixes(MapSource source) {
        super(source.name());
        this.source = source;
    }

    static FixLog read(MapSource source, InputStream in) throws IOException {
        GpxFixes reading = new GpxFixes(source);
        reading.parse(new InputSource(in));
        return reading.log();
    }

    private FixLog log() throws ReadException {
        if (readings.isEmpty()) {
            throw source.refuse(0, TEXTS.text("gpxFixes.fileHoldsWaypoints", "case", withoutFix > 0), FixReader.RIGHT_FILE);
        }
        List<String> remarks = new ArrayList<>();
        if (withoutFix > 0) {
            remarks.add(TEXTS.text("gpxFixes.pointsWithoutFix", "withoutFix", withoutFix));
        }
        if (withoutTime > 0) {
            remarks.add(TEXTS.text("gpxFixes.pointsHaveTime", "withoutTime", withoutTime));
        }
        return new FixLog(source.name(), readings, remarks);
    }

    @Override
    protected void begin(String localName, Attributes attributes) throws SAXException {
        depth++;
        text = null;
        if (depth == 1 && !localName.equals("gpx")) {
            throw refuse(TEXTS.text("gpxFixes.xmlNotGpx", "localName", localName), FixReader.RIGHT_FILE);
        }
        if (depth > DEEPEST) {
            throw refuse(TEXTS.text("gpxFixes.gpxNestedSo"), AGAIN);
        }
        if (position == null && (localName.equals("trkpt") || localName.equals("wpt"))) {
            position = position(attributes);
            pointDepth = depth;
            parts.clear();
        } else if (position != null && depth == pointDepth + 1) {
            text = new StringBuilder();
        }
    }

    private GeoPosition position(Attributes attributes) throws SAXException {
        if (readings.size() >= MOST) {
            throw refuse(TEXTS.text("gpxFixes.hasMoreThan", "most", MOST), TEXTS.text("fixReader.cutMinutesMark"));
        }
        try {
            double latitude = number(attributes.getValue("lat"));
            double longitude = number(attributes.getValue("lon"));
            if (Math.abs(longitude) > 180) {
                throw new IllegalArgumentException();
            }
            return new GeoPosition(latitude, longitude);
        } catch (IllegalArgumentException e) {
            throw refuse(TEXTS.text("gpxFixes.latLonPosition", "attributes", attributes.getValue("lat"),
                    "attributes2", attributes.getValue("lon")), TEXTS.text("gpxFixes.correctFileFetch"));
        }
    }

    @Override
    public void characters(char[] characters, int start, int length) {
        if (text != null) {
            text.append(characters, start, Math.min(length, LONGEST_TEXT - text.length()));
        }
    }

    @Override
    public void endElement(String uri, String localName, String qName) throws SAXException {
        if (text != null) {
            parts.put(localName, text.toString().strip());
            text = null;
        }
        if (position != null && depth == pointDepth) {
            point();
            position = null;
        }
        depth--;
    }

    private void point() throws SAXException {
        if ("none".equals(parts.get("fix"))) {
            withoutFix++;
            return;
        }
        Optional<Instant> at = time(parts.get("time"));
        withoutTime += at.isEmpty() ? 1 : 0;
        OptionalDouble altitude = OptionalDouble.empty();
        if (parts.containsKey("ele") && parts.containsKey("geoidheight")) {
            try {
                altitude = OptionalDouble.of(number(parts.get("ele")) + number(parts.get("geoidheight")));
            } catch (IllegalArgumentException e) {
                throw refuse(TEXTS.text("gpxFixes.heightNotNumber", "parts", parts.get("ele")), AGAIN);
            }
        }
        readings.add(new FixLog.Reading(at, position, altitude, OptionalDouble.empty()));
    }

    private Optional<Instant> time(String written) throws SAXException {
        if (written == null || written.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(OffsetDateTime.parse(written).toInstant());
        } catch (DateTimeException e) {
            throw refuse(TEXTS.text("gpxFixes.timeNotLike", "written", written), AGAIN);
        }
    }

    private static double number(String written) {
        if (written == null || !written.matches("\\s*[+-]?\\d{0,9}\\.?\\d{0,20}([eE][+-]?\\d{1,2})?\\s*")) {
            throw new IllegalArgumentException();
        }
        return Double.parseDouble(written);
    }

    private XmlRefusal refuse(String what, String whatToDo) {
        return new XmlRefusal(source.refuse(line(), what, whatToDo));
    }
}
