package org.straddle.ui.safety.guided;

import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicReference;

import org.eclipse.emf.common.command.Command;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;
import org.straddle.exchange.maps.LayerSource;
import org.straddle.exchange.maps.WiresOnMaps;
import org.straddle.grid.GeoPosition;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Visit;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.safety.guided.GuidedReview;
import org.straddle.safety.guided.HazardProposal;
import org.straddle.safety.guided.HazardProposals;
import org.straddle.ui.session.Edit;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.work.FileWork;
import org.straddle.ui.work.Problem;
import org.straddle.words.Catalogue;

/** Leads somebody through the questions of a site, and enters the visit and the review that come of them as one step. */
public final class GuideThrough {

    private static final Catalogue TEXTS = Catalogue.of(GuideThrough.class);

    private final EventSession session;
    private final Shell shell;

    public GuideThrough(EventSession session, Shell shell) {
        this.session = session;
        this.shell = shell;
    }

    /**
     * @param used day on which the site is used
     * @param today day of the review
     */
    public void ask(Site site, LocalDate used, LocalDate today) {
        List<HazardProposal> proposals = session.computed().map(computed -> proposals(computed.outlook(), site, used)).orElse(List.of());
        GuidedReviewDialog dialog = new GuidedReviewDialog(shell, GuidedReview.begin(site, today, session.event().getPolicies(), proposals));
        if (dialog.open() == Window.OK) {
            enter(site, dialog.review());
        }
    }

    /** From the last state of the event that was worked out. */
    private List<HazardProposal> proposals(Outlook outlook, Site live, LocalDate used) {
        return outlook.event().getSites().stream().filter(site -> site.getId().equals(live.getId())).findFirst()
                .map(site -> HazardProposals.of(outlook, site, Itinerary.of(outlook.event()).at(site), used,
                        outlook.isPlaced(site) ? wires(outlook.position(site)) : OptionalDouble.empty())).orElse(List.of());
    }

    private OptionalDouble wires(GeoPosition place) {
        AtomicReference<OptionalDouble> found = new AtomicReference<>(OptionalDouble.empty());
        try {
            List<LayerSource> layers = LayerSource.of(session.folder());
            if (!layers.isEmpty()) {
                FileWork.run(shell, TEXTS.text("guideThrough.maps"), () -> found.set(WiresOnMaps.nearestM(layers, place, null)));
            }
        } catch (IOException unreadable) {
            Problem.show(shell, TEXTS.text("guideThrough.maps.failed"), unreadable);
        }
        return found.get();
    }

    /** The review keeps what lies under it, so its visit must stand in the site when it is made. */
    private void enter(Site site, GuidedReview answers) {
        Visit visit = answers.visit();
        Command seen = Edit.add(session.editingDomain(), site, Literals.SITE__VISITS, visit);
        session.execute(seen);
        Review review = answers.review(visit, Instant.now().truncatedTo(ChronoUnit.MINUTES));
        session.executeInstead(seen, Edit.together(TEXTS.text("guideThrough.undo", "site", Naming.name(site)), List.of(
                Edit.add(session.editingDomain(), site, Literals.SITE__VISITS, visit),
                Edit.add(session.editingDomain(), site, Literals.SITE__REVIEWS, review))));
    }
}
