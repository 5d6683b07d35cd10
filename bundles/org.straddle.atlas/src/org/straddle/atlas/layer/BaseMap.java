package org.straddle.atlas.layer;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.GZIPInputStream;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.geotools.api.feature.simple.SimpleFeature;
import org.geotools.data.simple.SimpleFeatureCollection;
import org.locationtech.jts.geom.CoordinateSequence;
import org.straddle.atlas.plane.Projector;
import org.straddle.words.Catalogue;

/**
 * Coasts and borders of the whole Earth, from Natural Earth and the U.S. Census Bureau; {@code basemap-origin.txt}
 * beside the data says more. Good to a kilometre: it shows where one is.
 *
 * @param land rings with land on their right; a ring within another is a hole
 * @param borders lines between countries
 * @param states lines between the states of the United States
 */
public record BaseMap(SimpleFeatureCollection land, SimpleFeatureCollection borders, SimpleFeatureCollection states) {

    private static final Catalogue TEXTS = Catalogue.of(BaseMap.class);

    /** For the foot of a page. */
    public static final String ORIGIN =
            TEXTS.text("base.credit");

    private static final String FORMAT = "SBM1";
    private static final double PER_DEGREE = 500;

    /**
     * Reads the base map that comes with this bundle.
     *
     * @param monitor may be null
     * @throws IOException when the installation is damaged
     * @throws org.eclipse.core.runtime.OperationCanceledException soon after the monitor was cancelled
     */
    public static BaseMap load(IProgressMonitor monitor) throws IOException {
        try (InputStream packed = BaseMap.class.getResourceAsStream("basemap.bin.gz")) {
            if (packed == null) {
                throw new IOException(TEXTS.text("base.missing"));
            }
            return read(packed, monitor);
        }
    }

    static BaseMap read(InputStream packed, IProgressMonitor monitor) throws IOException {
        SubMonitor progress = SubMonitor.convert(monitor, TEXTS.text("base.loading"), 100);
        try (DataInputStream in = new DataInputStream(new BufferedInputStream(new GZIPInputStream(packed), 1 << 16))) {
            if (!new String(in.readNBytes(4), StandardCharsets.US_ASCII).equals(FORMAT)) {
                throw new IOException(TEXTS.text("base.format"));
            }
            return new BaseMap(set(in, "area", progress.split(80)), set(in, "lines", progress.split(15)),
                    set(in, "lines", progress.split(5)));
        } catch (EOFException e) {
            throw new IOException(TEXTS.text("base.cut"), e);
        }
    }

    private static SimpleFeatureCollection set(DataInputStream in, String shape, SubMonitor progress) throws IOException {
        int parts = number(in);
        progress.setWorkRemaining(Math.max(1, parts));
        List<SimpleFeature> features = new ArrayList<>();
        for (int part = 0; part < parts; part++) {
            progress.split(1);
            CoordinateSequence places = Projector.SHAPES.getCoordinateSequenceFactory().create(number(in), 2);
            int longitude = 0;
            int latitude = 0;
            for (int i = 0; i < places.size(); i++) {
                longitude += number(in);
                latitude += number(in);
                places.setOrdinate(i, CoordinateSequence.X, longitude / PER_DEGREE);
                places.setOrdinate(i, CoordinateSequence.Y, latitude / PER_DEGREE);
            }
            features.add(MapFeatures.feature(Projector.SHAPES.createLineString(places), "", "", shape, part));
        }
        return MapFeatures.collection(features);
    }

    private static int number(DataInputStream in) throws IOException {
        int zigzag = 0;
        for (int shift = 0; ; shift += 7) {
            int next = in.readUnsignedByte();
            zigzag |= (next & 127) << shift;
            if (next < 128) {
                return zigzag >>> 1 ^ -(zigzag & 1);
            }
        }
    }
}
