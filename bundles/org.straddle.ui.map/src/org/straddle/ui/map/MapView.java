package org.straddle.ui.map;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.contexts.IContextService;
import org.straddle.atlas.scene.SiteSpot;
import org.straddle.check.Finding;
import org.straddle.exchange.maps.LayerSource;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.PositionText;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Visit;
import org.straddle.model.Turn;
import org.straddle.ui.parts.PictureAccess;
import org.straddle.ui.parts.SessionView;
import org.straddle.ui.parts.ThingSelection;
import org.straddle.ui.places.PlaceBoard;
import org.straddle.ui.places.PlaceListener;
import org.straddle.ui.places.ShownPlace;
import org.straddle.ui.session.Computed;
import org.straddle.ui.session.Edit;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.work.Problem;
import org.straddle.words.Catalogue;

/** Where everything is: squares and their demand, sites, drives, the user's layers, and the reach of a pass. */
public final class MapView extends SessionView<MapBoard> implements MapActions.Deeds {

    private static final Catalogue TEXTS = Catalogue.of(MapView.class);

    public static final String ID = "org.straddle.ui.map.view";

    private final ThingSelection selection = new ThingSelection();
    private final ISelectionListener follow = this::follow;
    private final PlaceListener places = new PlaceListener() {
        @Override
        public void placesShown(List<ShownPlace> found) {
            maker.places(found);
        }
    };
    private final Set<String> hiddenByHand = new HashSet<>();
    private MapBoard board;
    private MapCanvas map;
    private MapMaker maker;
    private MapHands hands;
    private PictureAccess access;

    public MapView() {
        super(TEXTS.text("mapView.openEventFolder"));
    }

    @Override
    protected MapBoard content(Composite parent) {
        board = new MapBoard(parent);
        return board;
    }

    @Override
    protected void equip(MapBoard content) {
        map = board.map();
        maker = new MapMaker(board.control().getDisplay(), this::made);
        hands = new MapHands(map, this::chosen, site -> session().live(site.id()).ifPresent(session()::reveal), this::putDown);
        access = new PictureAccess(map.control(), new MapEntries(map));
        board.layers().onTick(this::ticked);
        new MapMouse(hands, board::pointed);
        new MapKeys(hands, this::goTo);
        new MapActions(getViewSite(), hands, board, this);
        getSite().setSelectionProvider(selection);
        getSite().getService(IContextService.class).activateContext(MapActions.CONTEXT);
        getSite().getPage().addPostSelectionListener(follow);
        PlaceBoard.current().addListener(places);
        maker.places(PlaceBoard.current().places());
    }

    @Override
    public void setFocus() {
        if (map.contents().isPresent()) {
            map.control().setFocus();
        } else {
            pages().setFocus();
        }
    }

    @Override
    public void dispose() {
        PlaceBoard.current().removeListener(places);
        maker.forget();
        getSite().getPage().removePostSelectionListener(follow);
        super.dispose();
    }

    @Override
    public void opened(EventSession opened) {
        maker.forget();
        hiddenByHand.clear();
        map.clear();
        pages().say(TEXTS.text("mapView.computing"), TEXTS.text("mapView.mapComesFirst"));
    }

    @Override
    public void closed(EventSession closed) {
        maker.forget();
        map.clear();
        selection.clear();
        super.closed(closed);
    }

    @Override
    public void edited(EventSession edited) {
        if (!edited.computing() && edited.computed().isEmpty()) {
            pages().say(TEXTS.text("mapView.nothingHasBeen"), TEXTS.text("mapView.computationStoppedFailed"));
        }
        readLayers();
    }

    @Override
    public void computed(EventSession from, Computed computed) {
        maker.show(computed);
        readLayers();
    }

    /** Sees which layers the event has now, and lets those be read that are new. */
    private void readLayers() {
        try {
            maker.layers(LayerSource.of(session().folder()));
        } catch (IOException failure) {
            Problem.log(TEXTS.text("mapView.folderLayersCannot"), failure);
        }
    }

    /** The event knows which of its layers are wanted; files that lie in the folder by hand are hidden until closing. */
    private void ticked(String name, boolean wanted) {
        Optional.ofNullable(maker.sources().get(name)).flatMap(LayerSource::id).flatMap(session()::live)
                .ifPresentOrElse(layer -> session().execute(Edit.set(session().editingDomain(), layer,
                        Literals.LAYER__VISIBLE, wanted)), () -> {
                            if (wanted) {
                                hiddenByHand.remove(name);
                            } else {
                                hiddenByHand.add(name);
                            }
                        });
    }

    private Set<String> hidden() {
        Set<String> hidden = new HashSet<>(hiddenByHand);
        maker.sources().forEach((name, source) -> {
            if (!source.visible()) {
                hidden.add(name);
            }
        });
        return hidden;
    }

    private void made() {
        if (map.control().isDisposed() || !session().isOpen()) {
            return;
        }
        maker.contents().ifPresent(contents -> {
            pages().showContent(true);
            map.show(contents);
            board.layers().show(contents, maker.refused(), hidden());
            boolean empty = contents.scene().sites().isEmpty() && !maker.isLoading();
            map.note(!maker.loading().isEmpty() ? maker.loading()
                    : empty ? TEXTS.text("mapView.siteHasPosition")
                            : contents.reach().map(reach -> MapFiles.reachWords(reach.pass())).orElse(""));
        });
    }

    private void chosen(Optional<SiteSpot> site) {
        site.flatMap(one -> session().live(one.id())).ifPresentOrElse(selection::select, selection::clear);
        access.selected();
    }

    private void putDown(Placing placing) {
        if (placing.siteId().isEmpty()) {
            Site site = SiteCommands.fresh(session().event(), placing.at());
            if (session().execute(SiteCommands.add(session().editingDomain(), session().event(), site))) {
                map.select(site.getId());
                session().reveal(site);
            }
        } else if (placing.isMoved()) {
            session().live(placing.siteId().get()).filter(Site.class::isInstance).map(Site.class::cast)
                    .ifPresent(site -> session().execute(SiteCommands.move(session().editingDomain(), session().event(), site,
                            placing.at())));
        }
    }

    private void follow(IWorkbenchPart part, ISelection chosen) {
        if (part == this || map.control().isDisposed() || !(chosen instanceof IStructuredSelection things)
                || maker.computed().isEmpty()) {
            return;
        }
        Object first = things.getFirstElement();
        Passes.meant(first, maker.computed().get().outlook()).ifPresent(pass -> maker.choose(Optional.of(pass)));
        site(first).flatMap(site -> map.sites().stream().filter(spot -> spot.id().equals(site.getId())).findFirst())
                .ifPresent(spot -> {
                    map.select(spot.id());
                    map.reveal(spot.at());
                    access.selected();
                });
    }

    /** The site that something belongs to; a finding stands for the first of its things that has one. */
    private static Optional<Site> site(Object chosen) {
        if (chosen instanceof Finding finding) {
            return finding.objects().stream().flatMap(thing -> site(thing).stream()).findFirst();
        }
        if (chosen instanceof Stop stop) {
            return Optional.ofNullable(stop.getSite());
        }
        // Visits and reviews lie in their site, turns in their stop.
        return chosen instanceof Site site ? Optional.of(site)
                : chosen instanceof Visit || chosen instanceof Review || chosen instanceof Turn
                        ? site(((EObject) chosen).eContainer()) : Optional.empty();
    }

    // What needs more than the map.

    @Override
    public void goTo() {
        String first = map.placing().map(placing -> PositionText.write(placing.at(), PositionText.Form.DEGREES)).orElse("");
        GoToDialog.ask(getSite().getShell(), map.placing().isPresent() ? TEXTS.text("mapView.whereSite")
                : TEXTS.text("mapView.go"), first).ifPresent(at -> {
            if (map.placing().isPresent()) {
                hands.placeAt(at);
            } else {
                map.goTo(at);
            }
        });
    }

    @Override
    public void recentre() {
        Optional<GeoPosition> middle = map.placeAt(map.sight().width() / 2.0, map.sight().height() / 2.0);
        maker.centre(middle);
        made();
    }

    @Override
    public void picture() {
        MapFiles.picture(getSite().getShell(), map);
    }

    /** Writes what is in sight to a PNG file, twice as fine as on the screen; false when that failed and was told. */
    public boolean writePicture(Path file) {
        return MapFiles.picture(getSite().getShell(), map, file);
    }

    @Override
    public void page() {
        maker.computed().ifPresent(computed -> MapFiles.page(getSite().getShell(), map, computed.outlook()));
    }
}
