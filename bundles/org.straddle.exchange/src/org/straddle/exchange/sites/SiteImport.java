package org.straddle.exchange.sites;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.common.command.UnexecutableCommand;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.exchange.CoordinateOrder;
import org.straddle.exchange.EventPlace;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Geodesic;
import org.straddle.grid.GridLine;
import org.straddle.grid.Locator;
import org.straddle.grid.NearBoundary;
import org.straddle.grid.NearbyBoundaries;
import org.straddle.grid.Square;
import org.straddle.grid.Standing;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Site;
import org.straddle.model.SiteKind;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.outlook.PolicyFigures;
import org.straddle.words.Catalogue;

/**
 * What happens to the sites of an event when a table is imported: line by line, which sites are new, which are said to
 * be otherwise and how, which are as they are, and which lines cannot be taken and why. Nothing changes until the
 * {@link #command} is executed, and that is one step for undo.
 *
 * <p>What a line leaves blank stays as it is. A new site without squares gets the one that it lies in; one that is said
 * to be a line or a corner site gets the squares of the nearest line or corner. A new site without a name is called by
 * its locator.
 */
public final class SiteImport {

    private static final Catalogue TEXTS = Catalogue.of(SiteImport.class);

    private static final double DEGREE_M = 110_000;

    /** Who knows a place no better, such as from a locator, does not stand on a line. */
    private static final double COARSE_M = 100;

    private final Event event;
    private final SiteMapping mapping;
    private final CoordinateOrder order;
    private final SiteKey key;
    private final List<SiteChange> changes = new ArrayList<>();
    private final boolean swapOffered;
    private final Map<String, List<Site>> byName = new HashMap<>();
    private final Map<String, Site> byId = new HashMap<>();
    /** Sites that a line was about, or names and ids of new ones, with that line. */
    private final Map<Object, Integer> said = new HashMap<>();

    private SiteImport(Event event, SourceTable table, SiteMapping mapping, CoordinateOrder order, SiteKey key) {
        this.event = event;
        this.mapping = mapping;
        this.order = order;
        this.key = key;
        for (Site site : event.getSites()) {
            byName.computeIfAbsent(plain(site.getName()), unused -> new ArrayList<>()).add(site);
            byId.put(site.getId(), site);
        }
        for (SourceTable.Row row : table.rows()) {
            changes.add(change(table, row));
        }
        swapOffered = order == CoordinateOrder.OF_THE_FORMAT && SwappedTable.seemsSwapped(table, mapping, EventPlace.of(event));
    }

    /**
     * Compares a table with an event; call it on the thread that edits the event.
     *
     * @throws IllegalArgumentException with a sentence for the user if the mapping has a problem
     */
    public static SiteImport of(Event event, SourceTable table, SiteMapping mapping, CoordinateOrder order, SiteKey key) {
        mapping.problem(key).ifPresent(problem -> {
            throw new IllegalArgumentException(problem);
        });
        return new SiteImport(event, table, mapping, order, key);
    }

    private static String plain(String name) {
        return name == null ? "" : name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    private SiteChange change(SourceTable table, SourceTable.Row row) {
        String name = "";
        try {
            name = mapping.column(SiteField.NAME).map(column -> table.value(row, column)).orElse("");
            SiteValues values = SiteValues.read(table, row, mapping, order);
            Optional<Site> known = known(values);
            if (known.isPresent()) {
                refuseSecond(known.get(), row.line());
                List<SiteChange.Detail> details = SiteDetails.of(values, known.get());
                return details.isEmpty() ? new SiteChange.Unchanged(row.line(), known.get())
                        : new SiteChange.Changed(row.line(), values.name().orElse(Objects.toString(known.get().getName(), "")), known.get(), details);
            }
            return added(values, row.line());
        } catch (SiteValues.Refusal e) {
            return new SiteChange.Refused(row.line(), name.length() > SiteValues.LONGEST_NAME ? name.substring(0, SiteValues.LONGEST_NAME) : name, e.getMessage(),
                    e.fitsSwapped());
        }
    }

    private Optional<Site> known(SiteValues values) throws SiteValues.Refusal {
        switch (key.kind()) {
            case ID:
                return values.id().map(byId::get);
            case NAME:
                List<Site> namesakes = values.name().map(name -> byName.getOrDefault(plain(name), List.of())).orElse(List.of());
                if (namesakes.size() > 1) {
                    throw SiteValues.Refusal.because(TEXTS.text("siteImport.eventHasSites", "namesakes", namesakes.size()));
                }
                return namesakes.stream().findFirst();
            default:
                return values.position().flatMap(position -> nearest(position.position()));
        }
    }

    private Optional<Site> nearest(GeoPosition position) {
        Site nearest = null;
        double least = key.withinM();
        for (Site site : event.getSites()) {
            if (Math.abs(site.getLatitudeDeg() - position.latitudeDeg()) * DEGREE_M <= key.withinM() && isPlaced(site)) {
                double distance = Geodesic.distanceM(position(site), position);
                if (distance <= least) {
                    nearest = site;
                    least = distance;
                }
            }
        }
        return Optional.ofNullable(nearest);
    }

    private void refuseSecond(Object what, int line) throws SiteValues.Refusal {
        Integer before = said.putIfAbsent(what, line);
        if (before != null) {
            throw SiteValues.Refusal.because(TEXTS.text("siteImport.lineAboutSame", "before", before));
        }
    }

    static boolean isPlaced(Site site) {
        return Math.abs(site.getLatitudeDeg()) <= 90 && Math.abs(site.getLongitudeDeg()) <= 180;
    }

    static GeoPosition position(Site site) {
        return new GeoPosition(site.getLatitudeDeg(), site.getLongitudeDeg());
    }

    private SiteChange added(SiteValues values, int line) throws SiteValues.Refusal {
        if (values.position().isEmpty()) {
            throw SiteValues.Refusal.because(values.name().isEmpty() && values.id().isEmpty()
                    ? TEXTS.text("siteImport.saysNeitherWhere")
                    : TEXTS.text("siteImport.eventHasSuch"));
        }
        GeoPosition position = values.position().get().position();
        Site site = Fresh.site();
        site.setName(values.name().orElse(Locator.of(position, 6).text()));
        if (key.kind() == SiteKey.Kind.NAME && values.name().isPresent()) {
            refuseSecond(plain(site.getName()), line);
        }
        if (key.kind() == SiteKey.Kind.ID && values.id().isPresent()) {
            refuseSecond(values.id().get(), line);
            if (values.id().get().matches("[0-9a-fA-F]{8}(-[0-9a-fA-F]{4}){3}-[0-9a-fA-F]{12}")) {
                site.setId(values.id().get());
            }
        }
        List<Square> squares = squares(values, position, site.getMarkErrorM());
        SiteKind kind = values.kind().orElseGet(() -> squares.size() == 1 ? SiteKind.INSIDE : squares.size() == 2 ? SiteKind.LINE : SiteKind.CORNER);
        SiteValues whole = new SiteValues(values.id(), values.name(), values.position(), Optional.empty(), values.errorOfNewMarkM(),
                values.altitudeM(), Optional.of(kind), squares);
        List<SiteChange.Detail> details = new ArrayList<>();
        for (SiteChange.Detail detail : SiteDetails.of(whole, null)) {
            detail.values().forEach(site::eSet);
            details.add(detail);
        }
        return new SiteChange.New(line, site, details);
    }

    /** As given; where neither squares nor a kind are, those that a station there can occupy at once. */
    private List<Square> squares(SiteValues values, GeoPosition position, double usualErrorM) throws SiteValues.Refusal {
        if (!values.squares().isEmpty()) {
            int count = values.squares().size();
            if (values.kind().isEmpty() && count != 1 && count != 2 && count != 4) {
                throw SiteValues.Refusal.because(TEXTS.text("siteImport.squaresGivenSite", "count", count));
            }
            return values.squares();
        }
        if (values.kind().isEmpty()) {
            return standing(position, values.errorOfNewMarkM().orElse(usualErrorM));
        }
        SiteKind kind = values.kind().get();
        if (kind == SiteKind.INSIDE) {
            return List.of(Square.of(position));
        }
        boolean line = kind == SiteKind.LINE;
        return NearbyBoundaries.of(position, NearbyBoundaries.FARTHEST_M).stream().filter(near -> near.boundary() instanceof GridLine == line)
                .findFirst().map(NearBoundary::squares).orElse(List.of(Square.of(position)));
    }

    private List<Square> standing(GeoPosition position, double errorM) {
        double spanM = PolicyFigures.of(event.getPolicies()).stationSpanM();
        try {
            return errorM > COARSE_M ? List.of(Square.of(position)) : Standing.of(position, errorM, spanM).squares();
        } catch (IllegalArgumentException impossibleLengths) {
            return List.of(Square.of(position));
        }
    }

    /** One for each line, in the order of the file. */
    public List<SiteChange> changes() {
        return List.copyOf(changes);
    }

    public List<SiteChange.Refused> refused() {
        return changes.stream().filter(SiteChange.Refused.class::isInstance).map(SiteChange.Refused.class::cast).toList();
    }

    /** Whether latitude and longitude seem to have changed places: offer {@link CoordinateOrder#SWAPPED}. */
    public boolean swapOffered() {
        return swapOffered;
    }

    /** Would the command change nothing? */
    public boolean isEmpty() {
        return changes.stream().noneMatch(change -> change instanceof SiteChange.New || change instanceof SiteChange.Changed);
    }

    /** One sentence for the user. */
    public String summary() {
        long fresh = changes.stream().filter(SiteChange.New.class::isInstance).count();
        long changed = changes.stream().filter(SiteChange.Changed.class::isInstance).count();
        long same = changes.stream().filter(SiteChange.Unchanged.class::isInstance).count();
        long bad = refused().size();
        return TEXTS.text("siteImport.freshChangedUnchanged", "fresh", fresh, "changed", changed, "same", same, "bad", bad);
    }

    /**
     * The one step that makes all changes; refused lines are left out of it.
     *
     * @return a command that cannot be executed when there is nothing to change
     */
    public Command command(EditingDomain domain) {
        if (isEmpty()) {
            return UnexecutableCommand.INSTANCE;
        }
        CompoundCommand command = new CompoundCommand(TEXTS.text("siteImport.importSites"));
        List<Site> fresh = new ArrayList<>();
        for (SiteChange change : changes) {
            if (change instanceof SiteChange.New added) {
                fresh.add(added.site());
            } else if (change instanceof SiteChange.Changed changed) {
                for (SiteChange.Detail detail : changed.details()) {
                    detail.values().forEach((feature, value) -> command.append(SetCommand.create(domain, changed.site(), feature, value)));
                }
            }
        }
        if (!fresh.isEmpty()) {
            command.append(AddCommand.create(domain, event, Literals.EVENT__SITES, fresh));
        }
        return command;
    }
}
