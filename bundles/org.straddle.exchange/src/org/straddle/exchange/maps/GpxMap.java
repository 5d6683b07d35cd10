package org.straddle.exchange.maps;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

import org.straddle.exchange.GpxText;
import org.straddle.exchange.MapSource;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.XmlReading;
import org.straddle.exchange.XmlRefusal;
import org.straddle.grid.MapRole;
import org.straddle.grid.Trace;
import org.straddle.words.Catalogue;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * Waypoints, routes and tracks of GPX 1.1; 1.0 has the same in this. Segments of a track stay apart, since between
 * them reception was lost. Elements count by their local names, and extensions not at all.
 */
final class GpxMap extends XmlReading {

    private static final Catalogue TEXTS = Catalogue.of(GpxMap.class);

    private static final int DEEPEST = 64;

    /** What a segment or a waypoint counts for beside its positions. */
    private static final int AS_POSITIONS = 2;

    private static final int LONGEST_NAME = 200;
    private static final double LARGEST_LONGITUDE = 180;
    /** Java would read "1d" and "0x1p3", too. */
    private static final Pattern DECIMAL = Pattern.compile("[\\s\\d.eE+-]*");

    private final MapSource source;
    private final MapContent content;
    private int depth;
    /** Depth of the extensions that are being skipped; 0 outside. */
    private int extensions;
    /** The waypoint, route or track that is being read; empty between them. */
    private String thing = "";
    private int thingLine;
    private String name = "";
    private String type = "";
    private final List<Trace> parts = new ArrayList<>();
    private Trace.Builder part = new Trace.Builder();
    /** The text of a name or type; null elsewhere. */
    private StringBuilder text;

    private GpxMap(MapSource source, MapContent content) {
        super(source.name());
        this.source = source;
        this.content = content;
    }

    static void read(MapSource source, InputStream in, MapContent content) throws IOException {
        GpxMap reading = new GpxMap(source, content);
        reading.parse(new InputSource(in));
    }

    @Override
    protected void begin(String localName, Attributes attributes) throws SAXException {
        depth++;
        if (depth <= 3) {
            weigh();
        }
        if (depth == 1 && !localName.equals("gpx")) {
            throw refuse(TEXTS.text("gpxMap.xmlNotGpx", "localName", localName), MapSource.RIGHT_FILE);
        }
        if (depth > DEEPEST) {
            throw refuse(TEXTS.text("gpxMap.gpxNestedSo"), AGAIN);
        }
        text = null;
        if (extensions > 0) {
            return;
        }
        switch (localName) {
            case "extensions" -> extensions = depth;
            case "wpt", "rte", "trk" -> beginThing(localName, attributes);
            case "rtept", "trkpt" -> point(attributes);
            case "name", "type" -> text = depth == 3 && !thing.isEmpty() ? new StringBuilder() : null;
            default -> {
                // Times, links, accuracies: of no use here.
            }
        }
    }

    private void weigh() throws SAXException {
        try {
            content.weigh(AS_POSITIONS, line());
        } catch (ReadException e) {
            throw new XmlRefusal(e);
        }
    }

    private void beginThing(String what, Attributes attributes) throws SAXException {
        if (depth != 2) {
            throw refuse(TEXTS.text("gpxMap.doesNotBelong", "what", what), AGAIN);
        }
        thing = what;
        thingLine = line();
        name = "";
        type = "";
        parts.clear();
        part = new Trace.Builder();
        if (what.equals("wpt")) {
            point(attributes);
        }
    }

    private void point(Attributes attributes) throws SAXException {
        if (thing.isEmpty()) {
            throw refuse(TEXTS.text("gpxMap.pointBelongsRoute"), AGAIN);
        }
        try {
            content.position(part, number(attributes, "lat"), number(attributes, "lon"), LARGEST_LONGITUDE, line());
        } catch (ReadException e) {
            throw new XmlRefusal(e);
        }
    }

    private double number(Attributes attributes, String attribute) throws SAXException {
        String value = attributes.getValue(attribute);
        if (value == null) {
            throw refuse(TEXTS.text("gpxMap.pointWithoutAttribute", "attribute", attribute), AGAIN);
        }
        try {
            if (!DECIMAL.matcher(value).matches()) {
                throw new NumberFormatException();
            }
            return Double.parseDouble(value);
        } catch (NumberFormatException e) {
            throw refuse(TEXTS.text("gpxMap.notNumber", "attribute", attribute,
                    "value", value.length() > 40 ? value.substring(0, 40) + "…" : value),
                    TEXTS.text("gpxMap.correctFileFetch"));
        }
    }

    @Override
    public void characters(char[] characters, int start, int length) {
        if (text != null) {
            text.append(characters, start, Math.min(length, LONGEST_NAME - text.length()));
        }
    }

    @Override
    public void endElement(String uri, String localName, String qName) {
        if (extensions == depth) {
            extensions = 0;
        } else if (text != null) {
            String value = GpxText.read(text.toString().replaceAll("\\s+", " ").strip());
            if (localName.equals("name")) {
                name = value;
            } else {
                type = value;
            }
            text = null;
        } else if (depth == 3 && localName.equals("trkseg") && thing.equals("trk")) {
            parts.add(part.build());
            part = new Trace.Builder();
        } else if (depth == 2 && localName.equals(thing)) {
            finish();
        }
        depth--;
    }

    private void finish() {
        if (thing.equals("wpt")) {
            content.points(name, role(), List.of(part.build()));
        } else {
            if (!thing.equals("trk") || part.size() > 0) {
                parts.add(part.build());
            }
            content.lines(name, role(), parts, thingLine);
        }
        thing = "";
    }

    /** The schema leaves types open, so only a word that we know is taken for a role. */
    private Optional<MapRole> role() {
        return type.matches("[\\p{L}\\p{N} _-]{1,40}") && !type.isBlank() ? Optional.of(new MapRole(type)).filter(MapRole::isKnown)
                : Optional.empty();
    }

    private XmlRefusal refuse(String what, String whatToDo) {
        return new XmlRefusal(source.refuse(line(), what, whatToDo));
    }
}
