package org.straddle.atlas.layer;

import java.util.ArrayList;
import java.util.List;

import org.geotools.data.simple.SimpleFeatureCollection;
import org.geotools.data.simple.SimpleFeatureIterator;
import org.locationtech.jts.geom.Geometry;
import org.straddle.atlas.plane.Generalised;
import org.straddle.atlas.plane.Outline;
import org.straddle.atlas.plane.Projector;

/** The base map on the plane of an event. */
public record LaidBaseMap(Generalised land, Generalised borders, Generalised states) {

    public static LaidBaseMap of(BaseMap map, Projector projector) {
        return new LaidBaseMap(new Generalised(projector.worldAreas(geometries(map.land()))),
                lines(map.borders(), projector), lines(map.states(), projector));
    }

    private static Generalised lines(SimpleFeatureCollection features, Projector projector) {
        List<Outline> outlines = new ArrayList<>();
        geometries(features).forEach(line -> outlines.add(projector.lines(line, "")));
        return new Generalised(outlines);
    }

    private static List<Geometry> geometries(SimpleFeatureCollection features) {
        List<Geometry> all = new ArrayList<>();
        try (SimpleFeatureIterator each = features.features()) {
            while (each.hasNext()) {
                all.add((Geometry) each.next().getDefaultGeometry());
            }
        }
        return all;
    }
}
