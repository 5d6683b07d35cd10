package org.straddle.ui.importing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.exchange.weather.ForecastImport;
import org.straddle.exchange.weather.ForecastTable;
import org.straddle.grid.Geodesic;
import org.straddle.grid.GeoPosition;
import org.straddle.model.Event;
import org.straddle.model.Site;
import org.straddle.words.Catalogue;

/** A forecast that was read, and what would come of it; knows no window. */
final class ForecastDraft implements PreviewedImport {

    private static final Catalogue TEXTS = Catalogue.of(ForecastDraft.class);

    private final Event event;
    private final Optional<Site> wanted;
    private Optional<ForecastImport> found = Optional.empty();

    /** @param wanted the site that it is to be for; empty for the one nearest to the place that the file names */
    ForecastDraft(Event event, Optional<Site> wanted) {
        this.event = event;
        this.wanted = wanted;
    }

    /** Takes a file in place of the one before. @throws ReadException at the first thing that is wrong with it */
    void take(SourceFile file) throws ReadException {
        found = Optional.empty();
        ForecastTable table = ForecastTable.read(file);
        Site site = wanted.filter(ForecastDraft::isPlaced).or(() -> wanted.isPresent() ? Optional.empty() : nearest(table.place()))
                .orElseThrow(() -> file.refuse(0, TEXTS.text("forecastDraft.nowhere"), TEXTS.text("forecastDraft.nowhere.make")));
        found = Optional.of(ForecastImport.into(event, site, table, file.name()));
    }

    private Optional<Site> nearest(GeoPosition place) {
        return event.getSites().stream().filter(ForecastDraft::isPlaced).min(Comparator.comparingDouble(site -> Geodesic.distanceM(place,
                new GeoPosition(site.getLatitudeDeg(), site.getLongitudeDeg()))));
    }

    private static boolean isPlaced(Site site) {
        return Math.abs(site.getLatitudeDeg()) <= 90 && Math.abs(site.getLongitudeDeg()) <= 180;
    }

    @Override
    public List<PreviewLine> lines() {
        return found.map(PreviewLine::of).orElse(List.of());
    }

    @Override
    public String summary() {
        return found.map(ForecastImport::summary).orElse("");
    }

    /** A file with a line that is wrong is refused as a whole. */
    @Override
    public int refusedLines() {
        return 0;
    }

    @Override
    public boolean changesNothing() {
        return found.isEmpty();
    }

    @Override
    public String doubt() {
        return "";
    }

    @Override
    public boolean leavesOutRefused() {
        return false;
    }

    @Override
    public void leaveOutRefused(boolean chosen) {
        throw new IllegalStateException("no line is refused");
    }

    @Override
    public boolean isReady() {
        return found.isPresent();
    }

    @Override
    public Command command(EditingDomain domain) {
        return found.orElseThrow().command(domain);
    }
}
