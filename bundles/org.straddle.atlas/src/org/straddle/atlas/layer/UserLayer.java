package org.straddle.atlas.layer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.geotools.api.feature.simple.SimpleFeature;
import org.geotools.data.simple.SimpleFeatureCollection;
import org.geotools.data.simple.SimpleFeatureIterator;
import org.straddle.atlas.plane.Generalised;
import org.straddle.atlas.plane.Outline;
import org.straddle.atlas.plane.Projector;
import org.straddle.exchange.maps.LayerRole;
import org.straddle.exchange.maps.MapFile;
import org.straddle.grid.MapRole;

/**
 * A map of the event's user, such as roads or power lines.
 *
 * @param name what to call it
 */
public record UserLayer(String name, SimpleFeatureCollection features) {

    /** A layer on the plane of an event: its things by their role, {@code ""} for none. */
    public record Laid(UserLayer layer, Map<String, Generalised> byRole) {
    }

    /**
     * @param name what to call it
     * @param role what the user says the whole layer is; when that is left to each thing, the name of the file tells
     *     what those are that do not say it themselves
     */
    public static UserLayer of(MapFile file, String name, LayerRole role) {
        return new UserLayer(name, MapFeatures.of(file.features(), role.role(), roleOf(file.name())));
    }

    /**
     * The role that a file's name tells, such as {@code power-lines.geojson}.
     *
     * @return empty when the name is none of the known roles
     */
    static Optional<MapRole> roleOf(String fileName) {
        String stem = fileName.replaceFirst("\\.[^.]*$", "");
        return stem.matches("[\\p{L}\\p{N} _-]{1,40}") && !stem.isBlank()
                ? Optional.of(new MapRole(stem)).filter(MapRole::isKnown) : Optional.empty();
    }

    /**
     * Lays the layer on a plane.
     *
     * @param monitor may be null
     * @throws org.eclipse.core.runtime.OperationCanceledException soon after the monitor was cancelled
     */
    public Laid lay(Projector projector, IProgressMonitor monitor) {
        SubMonitor progress = SubMonitor.convert(monitor, Math.max(1, features.size()));
        Map<String, List<Outline>> byRole = new LinkedHashMap<>();
        try (SimpleFeatureIterator each = features.features()) {
            while (each.hasNext()) {
                progress.split(1);
                SimpleFeature feature = each.next();
                byRole.computeIfAbsent((String) feature.getAttribute(MapFeatures.ROLE), unused -> new ArrayList<>())
                        .add(MapFeatures.outline(feature, projector));
            }
        }
        Map<String, Generalised> laid = new LinkedHashMap<>();
        byRole.forEach((word, outlines) -> laid.put(word, new Generalised(outlines)));
        return new Laid(this, laid);
    }
}
