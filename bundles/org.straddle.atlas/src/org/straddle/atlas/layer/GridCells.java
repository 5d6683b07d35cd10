package org.straddle.atlas.layer;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

import org.geotools.api.feature.simple.SimpleFeatureType;
import org.geotools.data.simple.SimpleFeatureCollection;
import org.geotools.feature.simple.SimpleFeatureTypeBuilder;
import org.geotools.geometry.jts.ReferencedEnvelope;
import org.geotools.grid.GridElement;
import org.geotools.grid.GridFeatureBuilder;
import org.geotools.grid.Lines;
import org.geotools.grid.PolygonElement;
import org.geotools.grid.oblong.Oblongs;
import org.geotools.grid.ortholine.LineOrientation;
import org.geotools.grid.ortholine.OrthoLineDef;
import org.geotools.referencing.crs.DefaultGeographicCRS;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import org.straddle.grid.GeoBounds;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Locator;

/** Fields, squares and subsquares as grids of GeoTools: areas that know their locator, and the lines between them. */
public final class GridCells {

    /** Attribute of an area: its locator. */
    public static final String LOCATOR = "locator";

    private GridCells() {
    }

    /** The areas of a level within bounds that lie on its lines. */
    public static SimpleFeatureCollection areas(GridLevel level, GeoBounds bounds) {
        SimpleFeatureTypeBuilder type = new SimpleFeatureTypeBuilder();
        type.setName("cells");
        type.add(GridFeatureBuilder.DEFAULT_GEOMETRY_ATTRIBUTE_NAME, Polygon.class, DefaultGeographicCRS.WGS84);
        type.add(LOCATOR, String.class);
        try {
            // A little wider: the sum of 24 twelfths rounds past 2, and the last row would be missing.
            ReferencedEnvelope wider = envelope(bounds);
            wider.expandToInclude(wider.getMaxX() + 1e-6 * level.widthDeg(), wider.getMaxY() + 1e-6 * level.heightDeg());
            return Oblongs.createGrid(wider, level.widthDeg(), level.heightDeg(), level.stepDeg(),
                    new Named(type.buildFeatureType(), level)).getFeatures();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The lines between the areas of a level within bounds, and the bounds themselves. */
    public static SimpleFeatureCollection lines(GridLevel level, GeoBounds bounds) {
        try {
            return Lines.createOrthoLines(envelope(bounds), List.of(
                    new OrthoLineDef(LineOrientation.VERTICAL, 1, level.widthDeg()),
                    new OrthoLineDef(LineOrientation.HORIZONTAL, 1, level.heightDeg())), level.stepDeg()).getFeatures();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ReferencedEnvelope envelope(GeoBounds bounds) {
        return new ReferencedEnvelope(bounds.westDeg(), bounds.eastDeg(), bounds.southDeg(), bounds.northDeg(),
                DefaultGeographicCRS.WGS84);
    }

    /** Names each area by the locator of its middle, which rounding of an edge cannot move into the next one. */
    private static final class Named extends GridFeatureBuilder {

        private final GridLevel level;

        Named(SimpleFeatureType type, GridLevel level) {
            super(type);
            this.level = level;
        }

        @Override
        public void setAttributes(GridElement area, Map<String, Object> attributes) {
            Coordinate middle = ((PolygonElement) area).getCenter();
            attributes.put(LOCATOR, Locator.of(new GeoPosition(middle.y, middle.x), level.characters()).text());
        }
    }
}
