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
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * Every waypoint and track point of a GPX file with its time. The format is on WGS 84 by definition. Its elevation is
 * above the sea, so a height above the ellipsoid is known only where the file also gives that of the geoid; an error
 * in metres it does not give at all.
 */
final class GpxFixes extends XmlReading {

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
            throw source.refuse(0, "the file holds no waypoints and no track points"
                    + (withoutFix > 0 ? " that the receiver had a fix for." : "."), FixReader.RIGHT_FILE);
        }
        List<String> remarks = new ArrayList<>();
        if (withoutFix > 0) {
            remarks.add(withoutFix + " points without a fix are left out.");
        }
        if (withoutTime > 0) {
            remarks.add(withoutTime + " points have no time.");
        }
        return new FixLog(source.name(), readings, remarks);
    }

    @Override
    protected void begin(String localName, Attributes attributes) throws SAXException {
        depth++;
        text = null;
        if (depth == 1 && !localName.equals("gpx")) {
            throw refuse("the XML is not GPX, but <" + localName + ">.", FixReader.RIGHT_FILE);
        }
        if (depth > DEEPEST) {
            throw refuse("no GPX is nested so deeply.", AGAIN);
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
            throw refuse("it has more than " + MOST + " points.", "Cut it to the minutes on the mark.");
        }
        try {
            double latitude = number(attributes.getValue("lat"));
            double longitude = number(attributes.getValue("lon"));
            if (Math.abs(longitude) > 180) {
                throw new IllegalArgumentException();
            }
            return new GeoPosition(latitude, longitude);
        } catch (IllegalArgumentException e) {
            throw refuse("lat=\"" + attributes.getValue("lat") + "\" lon=\"" + attributes.getValue("lon")
                    + "\" is no position.", "Correct the file, or fetch it again from its source.");
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
                throw refuse("a height \"" + parts.get("ele") + "\" is not a number.", AGAIN);
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
            throw refuse("the time \"" + written + "\" is not like 2026-06-20T12:00:00Z.", AGAIN);
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
