package org.straddle.atlas.layer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.geotools.api.feature.simple.SimpleFeature;
import org.geotools.api.feature.simple.SimpleFeatureType;
import org.geotools.data.collection.ListFeatureCollection;
import org.geotools.data.simple.SimpleFeatureCollection;
import org.geotools.feature.simple.SimpleFeatureBuilder;
import org.geotools.feature.simple.SimpleFeatureTypeBuilder;
import org.geotools.referencing.crs.DefaultGeographicCRS;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.straddle.atlas.plane.Outline;
import org.straddle.atlas.plane.Projector;
import org.straddle.grid.MapFeature;
import org.straddle.grid.MapRole;
import org.straddle.grid.Trace;

/**
 * Things on a map as a feature collection of GeoTools, in longitude and latitude on WGS 84. Longitudes run on past 180°
 * where a line does, and areas are the rings that bound them.
 */
public final class MapFeatures {

    /** Attributes of every feature. */
    public static final String GEOMETRY = "geometry";
    public static final String NAME = "name";
    public static final String ROLE = "role";
    /** {@code points}, {@code lines} or {@code area}. */
    public static final String SHAPE = "shape";

    private static final SimpleFeatureType TYPE = type();

    private MapFeatures() {
    }

    private static SimpleFeatureType type() {
        SimpleFeatureTypeBuilder type = new SimpleFeatureTypeBuilder();
        type.setName("map");
        type.setCRS(DefaultGeographicCRS.WGS84);
        type.add(GEOMETRY, Geometry.class);
        type.add(NAME, String.class);
        type.add(ROLE, String.class);
        type.add(SHAPE, String.class);
        return type.buildFeatureType();
    }

    /**
     * @param all what everything is, whatever it says of itself; empty leaves it to each thing
     * @param otherwise what a thing is that does not say it
     */
    static SimpleFeatureCollection of(List<MapFeature> features, Optional<MapRole> all, Optional<MapRole> otherwise) {
        List<SimpleFeature> made = new ArrayList<>(features.size());
        for (MapFeature feature : features) {
            made.add(feature(geometry(feature), feature.name(),
                    all.or(feature::role).or(() -> otherwise).map(MapRole::name).orElse(""),
                    feature.shape().name().toLowerCase(Locale.ROOT), made.size()));
        }
        return new ListFeatureCollection(TYPE, made);
    }

    static SimpleFeature feature(Geometry geometry, String name, String role, String shape, int number) {
        SimpleFeatureBuilder feature = new SimpleFeatureBuilder(TYPE);
        feature.addAll(geometry, name, role, shape);
        return feature.buildFeature("map." + number);
    }

    static SimpleFeatureCollection collection(List<SimpleFeature> features) {
        return new ListFeatureCollection(TYPE, features);
    }

    /** Lays a feature on the plane of a projector. */
    static Outline outline(SimpleFeature feature, Projector projector) {
        Geometry geometry = (Geometry) feature.getDefaultGeometry();
        String name = (String) feature.getAttribute(NAME);
        return switch ((String) feature.getAttribute(SHAPE)) {
            case "points" -> projector.points(geometry, name);
            case "area" -> projector.area(geometry, name);
            default -> projector.lines(geometry, name);
        };
    }

    private static Geometry geometry(MapFeature feature) {
        if (feature.shape() == MapFeature.Shape.POINTS) {
            return Projector.SHAPES.createMultiPointFromCoords(feature.parts().stream()
                    .flatMap(part -> part.positions().stream())
                    .map(place -> new Coordinate(place.longitudeDeg(), place.latitudeDeg())).toArray(Coordinate[]::new));
        }
        return Projector.SHAPES.createMultiLineString(feature.parts().stream().map(MapFeatures::line)
                .toArray(LineString[]::new));
    }

    private static LineString line(Trace trace) {
        CoordinateSequence places = Projector.SHAPES.getCoordinateSequenceFactory().create(trace.size(), 2);
        double longitude = 0;
        for (int i = 0; i < trace.size(); i++) {
            longitude = i == 0 ? trace.longitudeDeg(0)
                    : longitude + Math.IEEEremainder(trace.longitudeDeg(i) - longitude, 360);
            places.setOrdinate(i, CoordinateSequence.X, longitude);
            places.setOrdinate(i, CoordinateSequence.Y, trace.latitudeDeg(i));
        }
        return Projector.SHAPES.createLineString(places);
    }
}
