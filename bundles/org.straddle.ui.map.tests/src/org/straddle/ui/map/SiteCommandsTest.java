package org.straddle.ui.map;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.junit.jupiter.api.Test;
import org.straddle.demo.DemoEvent;
import org.straddle.grid.GeoPosition;
import org.straddle.model.Event;
import org.straddle.model.Site;
import org.straddle.model.SiteKind;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;

class SiteCommandsTest {

    private final Event event = DemoEvent.create();
    private final BasicCommandStack stack = new BasicCommandStack();
    private final AdapterFactoryEditingDomain domain =
            new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(), stack);

    private Site site(String name) {
        return event.getSites().stream().filter(site -> site.getName().equals(name)).findFirst().orElseThrow();
    }

    private void run(Command command) {
        assertTrue(command.canExecute());
        stack.execute(command);
    }

    @Test
    void aClaimThatFittedGoesOnFitting() {
        Site site = site("Basalt Mark");
        assertEquals(SiteKind.LINE, site.getKind());
        run(SiteCommands.move(domain, event, site, new GeoPosition(63.7, -20.5)));
        assertEquals(-20.5, site.getLongitudeDeg());
        assertEquals(SiteKind.INSIDE, site.getKind());
        assertEquals(List.of("HP93"), site.getSquares());
        assertEquals("Move site Basalt Mark", stack.getUndoCommand().getLabel());
        stack.undo();
        assertEquals(-20, site.getLongitudeDeg());
        assertEquals(SiteKind.LINE, site.getKind());
        assertEquals(List.of("HP93", "IP03"), site.getSquares().stream().sorted().toList());
        assertTrue(!stack.canUndo(), "one step");
    }

    @Test
    void aClaimOfSomebodysOwnStays() {
        Site site = site("Basalt Mark");
        site.getSquares().remove("IP03");
        run(SiteCommands.move(domain, event, site, new GeoPosition(63.7, -20.5)));
        assertEquals(SiteKind.LINE, site.getKind());
        assertEquals(List.of("HP93"), site.getSquares());
    }

    @Test
    void aNewSiteClaimsWhatItsMarkAllows() {
        Site site = SiteCommands.fresh(event, new GeoPosition(64, -18));
        assertEquals(SiteKind.CORNER, site.getKind());
        assertEquals(List.of("IP03", "IP04", "IP13", "IP14"), site.getSquares());
        run(SiteCommands.add(domain, event, site));
        assertEquals(21, event.getSites().size());
        stack.undo();
        assertEquals(20, event.getSites().size());
    }
}
