package org.straddle.ui.scout;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.common.command.Command;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Composite;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.maps.LayerSource;
import org.straddle.exchange.maps.ScoutedSite;
import org.straddle.exchange.maps.Scouting;
import org.straddle.grid.PositionText;
import org.straddle.model.Site;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Demands;
import org.straddle.outlook.PolicyFigures;
import org.straddle.ui.parts.Act;
import org.straddle.ui.parts.EmptyOr;
import org.straddle.ui.parts.SessionView;
import org.straddle.ui.places.PlaceBoard;
import org.straddle.ui.places.PlaceListener;
import org.straddle.ui.places.ShownPlace;
import org.straddle.ui.session.Edit;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.importing.AddLayer;
import org.straddle.ui.session.NewestJob;
import org.straddle.ui.workbench.PlanPerspective;
import org.straddle.words.Catalogue;

/**
 * Places where the roads of the event cross lines between squares or pass corners, best first. What is listed is also
 * on the board of places, where a map finds it.
 */
public final class ScoutView extends SessionView<ScoutPanel> implements PlaceListener {

    private static final Catalogue TEXTS = Catalogue.of(ScoutView.class);

    public static final String ID = "org.straddle.ui.scout.places";

    private static final String CAUTION = TEXTS.text("scoutView.placesComeFrom");
    private static final String NO_ROADS = TEXTS.text("scoutView.roadsYet");
    private static final String ADD_ROADS = TEXTS.text("scoutView.bringRoadsTracks");

    private final PlaceBoard board = PlaceBoard.current();
    private NewestJob<Found> job;
    private List<LayerSource> scouted = List.of();
    private String told = "";

    public ScoutView() {
        super(TEXTS.text("scoutView.placesAlongRoads"));
    }

    @Override
    protected ScoutPanel content(Composite parent) {
        ScoutPanel panel = new ScoutPanel(parent);
        panel.places(new EmptyOr<>(panel.body(), NO_ROADS, ADD_ROADS, body -> new PlaceTable(body, place -> board.choose(place.orElse(null)),
                this::showOnMap)));
        return panel;
    }

    @Override
    protected void equip(ScoutPanel panel) {
        board.addListener(this);
        panel.find().addSelectionListener(SelectionListener.widgetSelectedAdapter(click -> findOrStop()));
        panel.region().addListener(SWT.DefaultSelection, enter -> findOrStop());
        panel.region().addModifyListener(typing -> judgeRegion());
        PlaceTable table = panel.places().content();
        MenuManager menu = new MenuManager();
        menu.setRemoveAllWhenShown(true);
        menu.addMenuListener(this::fill);
        table.control().setMenu(menu.createContextMenu(table.control()));
        table.control().addKeyListener(KeyListener.keyPressedAdapter(key -> {
            if (key.keyCode == SWT.INSERT) {
                makeSites();
            } else if (key.stateMask == SWT.MOD1 && key.keyCode == 'c') {
                copyPositions();
            }
        }));
        IToolBarManager tools = getViewSite().getActionBars().getToolBarManager();
        tools.add(new Act(TEXTS.text("scoutView.makeSiteChosen"), "add", this::makeSites));
        tools.add(new Act(TEXTS.text("scoutView.addMapLayer"), "import", () -> {
            if (session().isOpen()) {
                AddLayer.ask(getSite().getShell());
            }
        }));
        tools.add(new Act(TEXTS.text("scoutView.writeList"),
                "export", () -> PlaceFile.ask(getSite().getShell(), table.rows())));
    }

    private void showOnMap(ShownPlace place) {
        PlanPerspective.showMap(getSite().getPage());
        board.seek(place);
    }

    private void fill(IMenuManager menu) {
        if (pages().content().places().content().chosen().isEmpty()) {
            return;
        }
        menu.add(new Act(TEXTS.text("scoutView.makeSiteInsert"), "add", this::makeSites));
        menu.add(new Act(TEXTS.text("scoutView.showMapEnter"), "open", () -> board.chosen().ifPresent(this::showOnMap)));
        menu.add(new Act(TEXTS.text("scoutView.copyPositionCtrl"), "link", this::copyPositions));
    }

    @Override
    public void setFocus() {
        if (session().isOpen()) {
            ScoutPanel panel = pages().content();
            (panel.places().content().rows().isEmpty() ? panel.find() : panel.places().content().control()).setFocus();
        } else {
            super.setFocus();
        }
    }

    @Override
    public void opened(EventSession opened) {
        PolicyFigures policies = PolicyFigures.of(opened.event().getPolicies());
        if (policies.stationSpanM() > 0) {
            pages().content().span(policies.stationSpanM());
        }
        forget();
        pages().showContent(true);
    }

    @Override
    public void closed(EventSession closed) {
        forget();
        super.closed(closed);
    }

    @Override
    public void edited(EventSession edited) {
        if (isLooking()) {
            return;
        }
        if (board.places().isEmpty()) {
            sayWhatToDo();
        } else {
            pages().content().tell(layers().equals(scouted) ? told : TEXTS.text("scoutView.layersWereChanged",
                    "told", told));
        }
    }

    /** What was found before does not belong to the event that is open now. */
    private void forget() {
        stop();
        board.clear();
        scouted = List.of();
        pages().content().tell("");
        pages().content().note("");
        pages().content().places().content().show(List.of(), List.of());
        if (session().isOpen()) {
            sayWhatToDo();
        }
    }

    private void sayWhatToDo() {
        List<LayerSource> layers = layers();
        if (layers.isEmpty()) {
            pages().content().places().say(NO_ROADS, ADD_ROADS);
        } else {
            pages().content().places().say(
                    TEXTS.text("scoutView.roadsWaiting"), TEXTS.text("scoutView.findPlacesLooks",
                    "layers", layers.size(),
                    "titles", layers.stream().map(layer -> layer.title() + " (" + layer.role().label() + ")").collect(Collectors.joining(", "))));
        }
    }

    private List<LayerSource> layers() {
        try {
            return LayerSource.of(session().folder());
        } catch (IOException e) {
            return List.of();
        }
    }

    private void judgeRegion() {
        try {
            pages().content().wantedRegion();
            pages().content().tell(told);
            pages().content().find().setEnabled(true);
        } catch (IllegalArgumentException e) {
            pages().content().tell(e.getMessage());
            pages().content().find().setEnabled(isLooking());
        }
    }

    private void findOrStop() {
        if (isLooking()) {
            stop();
            return;
        }
        if (!session().isOpen() || !pages().content().find().isEnabled()) {
            return;
        }
        ScoutPanel panel = pages().content();
        List<LayerSource> layers = layers();
        if (layers.isEmpty()) {
            panel.places().say(NO_ROADS, ADD_ROADS);
            return;
        }
        Scouting.Question question = new Scouting.Question(panel.reach(), panel.wantedRegion(), Map.of());
        Demands demands = Demands.of(session().event());
        looking().run((monitor, news) -> {
            long begun = System.nanoTime();
            Scouting scouting = Scouting.of(layers, question, demands::of, monitor);
            return new Found(scouting, layers, (System.nanoTime() - begun) / 1e9);
        }, new Ending());
        panel.find().setText(TEXTS.text("scoutView.stop"));
        panel.find().requestLayout();
        panel.tell(TEXTS.text("scoutView.looking"));
    }

    private boolean isLooking() {
        return job != null && job.isRunning();
    }

    private NewestJob<Found> looking() {
        if (job == null) {
            job = new NewestJob<>(getSite().getShell().getDisplay(), new NewestJob.Kind(
                    TEXTS.text("scoutJob.lookingPlacesAlong"), true, Job.LONG,
                    TEXTS.text("scoutJob.failed")));
        }
        return job;
    }

    /** What a search found, in which layers, and how long it took. */
    private record Found(Scouting scouting, List<LayerSource> layers, double seconds) {
    }

    private final class Ending implements NewestJob.Heard<Found> {

        @Override
        public void done(Found found) {
            if (!pages().content().find().isDisposed()) {
                show(found);
            }
        }

        @Override
        public void failed(Throwable failure) {
            if (!pages().content().find().isDisposed()) {
                atRest("");
                board.clear();
                pages().content().places().say(TEXTS.text("scoutView.layerCannotRead"), sentence(failure));
            }
        }

        @Override
        public void stopped() {
            if (!pages().content().find().isDisposed()) {
                atRest(TEXTS.text("scoutView.stopped"));
            }
        }

        /** What is wrong, where, and what to do. */
        private String sentence(Throwable failure) {
            return failure instanceof ReadException ? failure.getMessage()
                    : failure instanceof OutOfMemoryError ? TEXTS.text("scoutJob.layersTooLarge")
                    : TEXTS.text("scoutJob.searchFailedEvent");
        }
    }

    private void stop() {
        if (isLooking()) {
            job.stop();
            atRest(TEXTS.text("scoutView.stopped"));
        }
    }

    private void atRest(String words) {
        told = words;
        pages().content().find().setText(TEXTS.text("scoutPanel.findPlaces"));
        pages().content().find().requestLayout();
        pages().content().tell(words);
    }

    private void show(Found found) {
        Scouting scouting = found.scouting();
        scouted = found.layers();
        List<ShownPlace> places = new ArrayList<>();
        for (int i = 0; i < scouting.places().size(); i++) {
            places.add(new ShownPlace(i + 1, scouting.places().get(i)));
        }
        String remarks = scouting.remarks().isEmpty() ? "" : TEXTS.text("scoutView.remarks", "count", scouting.remarks().size(),
                "first", scouting.remarks().get(0));
        atRest(TEXTS.text("scoutView.found", "places", places.size(), "kilometres", scouting.roadsKm(),
                "long", found.seconds() >= 0.1, "seconds", found.seconds()));
        pages().content().note(CAUTION + remarks);
        EmptyOr<PlaceTable> list = pages().content().places();
        if (scouting.roads() == 0) {
            list.say(TEXTS.text("scoutView.noneLayersHolds"), TEXTS.text("scoutView.giveLayerRole") + " " + ADD_ROADS);
        } else if (places.isEmpty()) {
            list.say(TEXTS.text("scoutView.placesFound"), TEXTS.text("scoutView.noneRoadsCrosses"));
        } else {
            list.content().show(places, scouting.around());
            list.showContent(true);
        }
        board.show(places);
    }

    @Override
    public void placeChosen(Optional<ShownPlace> place) {
        place.ifPresent(pages().content().places().content()::choose);
    }

    private void makeSites() {
        List<ShownPlace> chosen = pages().content().places().content().chosen();
        if (chosen.isEmpty() || !session().isOpen()) {
            return;
        }
        List<Site> taken = new ArrayList<>(session().event().getSites());
        List<Command> commands = new ArrayList<>();
        List<Site> made = new ArrayList<>();
        for (ShownPlace place : chosen) {
            Site site = ScoutedSite.of(place.candidate().candidate(), taken);
            taken.add(site);
            made.add(site);
            commands.add(Edit.add(session().editingDomain(), session().event(), Literals.EVENT__SITES, site, "site"));
        }
        if (session().execute(Edit.together(made.size() == 1 ? TEXTS.text("scoutView.makeSite",
                "site", Naming.name(made.get(0))) : TEXTS.text("scoutView.makeSites", "count", made.size()), commands))
                && made.size() == 1) {
            session().reveal(made.get(0));
        }
    }

    private void copyPositions() {
        String text = pages().content().places().content().chosen().stream()
                .map(place -> PositionText.write(place.candidate().candidate().position(), PositionText.Form.DEGREES))
                .collect(Collectors.joining("\n"));
        if (!text.isEmpty()) {
            Clipboard clipboard = new Clipboard(getSite().getShell().getDisplay());
            clipboard.setContents(new Object[] {text}, new Transfer[] {TextTransfer.getInstance()});
            clipboard.dispose();
        }
    }

    @Override
    public void dispose() {
        if (isLooking()) {
            job.stop();
        }
        board.removeListener(this);
        board.clear();
        super.dispose();
    }
}
