package org.straddle.check.fix;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.UnexecutableCommand;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.check.Fix;
import org.straddle.check.Statement;
import org.straddle.model.Event;
import org.straddle.model.Site;
import org.straddle.model.StraddlePackage;

/** Corrects what is written down of a site. */
public record ChangeSite(Statement says, String siteId, EStructuralFeature feature, Object value) implements Fix {

    /** @param squares in the order to be written down */
    public static ChangeSite claiming(Collection<String> squares, Statement says, Site site) {
        return new ChangeSite(says, site.getId(), StraddlePackage.Literals.SITE__SQUARES, List.copyOf(squares));
    }

    @Override
    public String label() {
        return says.sentence();
    }

    @Override
    public Command command(EditingDomain domain, Event live) {
        return live.getSites().stream().filter(site -> siteId.equals(site.getId())).findFirst()
                .map(site -> SetCommand.create(domain, site, feature, value)).orElse(UnexecutableCommand.INSTANCE);
    }
}
