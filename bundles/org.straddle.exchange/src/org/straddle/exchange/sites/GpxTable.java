package org.straddle.exchange.sites;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.straddle.exchange.GpxText;
import org.straddle.exchange.MapSource;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.XmlReading;
import org.straddle.exchange.XmlRefusal;
import org.straddle.words.Catalogue;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Waypoints of GPX 1.1 (and 1.0) with what they say of themselves; extensions count not at all. */
final class GpxTable extends XmlReading {

    private static final Catalogue TEXTS = Catalogue.of(GpxTable.class);

    private static final int DEEPEST = 64;
    /** Elements of wptType in the schema that tell something of a site. */
    private static final Set<String> TELLING = Set.of("name", "cmt", "desc", "sym", "type");

    private final MapSource source;
    private final RowsOfNames rows;
    private int depth;
    private int lines;
    /** Of the waypoint that is being read; null between them. */
    private Map<String, String> said;
    private int begun;
    /** Null outside the elements that tell something. */
    private StringBuilder text;

    private GpxTable(MapSource source) {
        super(source.name());
        this.source = source;
        this.rows = new RowsOfNames(source);
    }

    static SourceTable read(MapSource source, String xml) throws ReadException {
        GpxTable reading = new GpxTable(source);
        reading.parse(new InputSource(new StringReader(xml)));
        List<String> remarks = new ArrayList<>();
        if (reading.lines > 0) {
            remarks.add(TEXTS.text("gpxTable.linesSiteBring", "lines", reading.lines));
        }
        return reading.rows.toTable(remarks);
    }

    @Override
    protected void begin(String localName, Attributes attributes) throws SAXException {
        depth++;
        if (depth == 1 && !localName.equals("gpx")) {
            throw new XmlRefusal(source.refuse(line(), TEXTS.text("gpxTable.xmlNotGpx",
                    "localName", localName), SourceTable.RIGHT_FILE));
        }
        if (depth > DEEPEST) {
            throw new XmlRefusal(source.refuse(line(), TEXTS.text("gpxTable.gpxNestedSo"), AGAIN));
        }
        text = null;
        if (depth == 2) {
            beginThing(localName, attributes);
        } else if (depth == 3 && said != null && (localName.equals("ele") || TELLING.contains(localName))) {
            text = new StringBuilder();
        }
    }

    private void beginThing(String what, Attributes attributes) throws SAXException {
        if (what.equals("trk") || what.equals("rte")) {
            lines++;
        } else if (what.equals("wpt")) {
            said = new LinkedHashMap<>();
            begun = line();
            said.put(SourceTable.LATITUDE, coordinate(attributes, "lat"));
            said.put(SourceTable.LONGITUDE, coordinate(attributes, "lon"));
        }
    }

    private String coordinate(Attributes attributes, String name) throws SAXException {
        String value = attributes.getValue(name);
        if (value == null || value.isBlank()) {
            throw new XmlRefusal(source.refuse(line(), TEXTS.text("gpxTable.waypointWithoutAttribute",
                    "name", name), AGAIN));
        }
        return value.strip();
    }

    @Override
    public void characters(char[] characters, int start, int length) {
        if (text != null) {
            text.append(characters, start, Math.min(length, SourceTable.LONGEST_VALUE - text.length()));
        }
    }

    @Override
    public void endElement(String uri, String localName, String qName) throws SAXException {
        if (depth == 3 && text != null) {
            said.put(localName.equals("ele") ? SourceTable.ALTITUDE : localName, GpxText.read(text.toString().replaceAll("\\s+", " ").strip()));
            text = null;
        } else if (depth == 2 && said != null) {
            try {
                rows.add(begun, said);
            } catch (ReadException e) {
                throw new XmlRefusal(e);
            }
            said = null;
        }
        depth--;
    }
}
