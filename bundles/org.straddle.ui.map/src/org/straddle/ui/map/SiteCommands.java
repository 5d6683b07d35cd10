package org.straddle.ui.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.outlook.things.Claim;
import org.straddle.grid.GeoPosition;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Policies;
import org.straddle.model.Site;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.naming.Naming;
import org.straddle.ui.session.Edit;
import org.straddle.words.Catalogue;

/**
 * What the map does to sites, each as one step of undo. A claim of kind and squares that fitted the mark goes on
 * fitting it; one that somebody made otherwise is theirs, and stays.
 */
final class SiteCommands {

    private static final Catalogue TEXTS = Catalogue.of(SiteCommands.class);

    private SiteCommands() {
    }

    static Command move(EditingDomain domain, Event event, Site site, GeoPosition to) {
        List<Command> commands = new ArrayList<>();
        Optional<Claim> before = claim(event, site.getLatitudeDeg(), site.getLongitudeDeg(), site.getMarkErrorM());
        commands.add(Edit.set(domain, site, Literals.SITE__LATITUDE_DEG, to.latitudeDeg()));
        commands.add(Edit.set(domain, site, Literals.SITE__LONGITUDE_DEG, to.longitudeDeg()));
        if (before.filter(claim -> claim.isOf(site)).isPresent()) {
            claim(event, to.latitudeDeg(), to.longitudeDeg(), site.getMarkErrorM()).ifPresent(claim -> {
                commands.add(Edit.set(domain, site, Literals.SITE__KIND, claim.kind()));
                commands.add(Edit.set(domain, site, Literals.SITE__SQUARES, claim.squares()));
            });
        }
        return Edit.together(TEXTS.text("siteCommands.moveSite", "site", Naming.name(site)), commands);
    }

    /** A site that claims what its mark allows; it still wants a name. */
    static Site fresh(Event event, GeoPosition at) {
        Site site = Fresh.site();
        site.setLatitudeDeg(at.latitudeDeg());
        site.setLongitudeDeg(at.longitudeDeg());
        site.setName(TEXTS.text("siteCommands.newSite", "number", event.getSites().size() + 1));
        claim(event, at.latitudeDeg(), at.longitudeDeg(), site.getMarkErrorM()).ifPresent(claim -> {
            site.setKind(claim.kind());
            site.getSquares().addAll(claim.squares());
        });
        return site;
    }

    static Command add(EditingDomain domain, Event event, Site site) {
        return Edit.add(domain, event, Literals.EVENT__SITES, site, TEXTS.text("siteCommands.site", "site", Naming.name(site)));
    }

    private static Optional<Claim> claim(Event event, double latitudeDeg, double longitudeDeg, double errorM) {
        double span = Optional.ofNullable(event.getPolicies()).map(Policies::getStationSpanM).orElse(0.0);
        try {
            return Optional.of(Claim.of(new GeoPosition(latitudeDeg, longitudeDeg), errorM, span));
        } catch (IllegalArgumentException impossible) {
            return Optional.empty();
        }
    }
}
