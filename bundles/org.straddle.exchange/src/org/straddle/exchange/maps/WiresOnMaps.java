package org.straddle.exchange.maps;

import java.util.List;
import java.util.OptionalDouble;

import org.eclipse.core.runtime.IProgressMonitor;
import org.straddle.exchange.ReadException;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.MapFeature;
import org.straddle.grid.MapRole;
import org.straddle.grid.Nearness;
import org.straddle.grid.Surroundings;

/** How far the nearest overhead wires are that the maps of an event show. Maps leave wires out: none shown does not mean none there. */
public final class WiresOnMaps {

    private WiresOnMaps() {
    }

    /**
     * Long work.
     *
     * @param monitor may be null
     * @return metres; empty where no map shows wires within the usual reach
     */
    public static OptionalDouble nearestM(List<LayerSource> layers, GeoPosition place, IProgressMonitor monitor) throws ReadException {
        MapLayers maps = new MapLayers();
        for (LayerSource layer : layers) {
            maps.addLayer(layer, layer.read(monitor));
        }
        List<MapFeature> wires = maps.around().getOrDefault(MapRole.POWER_LINE, List.of());
        return Surroundings.of(MapRole.POWER_LINE, wires).nearest(place, null).map(Nearness::distanceM).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
