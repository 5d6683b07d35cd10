package org.straddle.ui.workbench;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.CompoundContributionItem;
import org.straddle.ui.folder.OpenEvent;
import org.straddle.ui.folder.RecentEvents;
import org.straddle.words.Catalogue;

/** The events that were opened last, each with a digit as its key in the menu. */
public final class OpenRecent extends CompoundContributionItem {

    private static final Catalogue TEXTS = Catalogue.of(OpenRecent.class);

    @Override
    protected IContributionItem[] getContributionItems() {
        List<Path> recent = RecentEvents.list();
        if (recent.isEmpty()) {
            Action none = new Action(TEXTS.text("openRecent.none")) {
            };
            none.setEnabled(false);
            return new IContributionItem[] {new ActionContributionItem(none)};
        }
        return recent.stream().map(path -> new ActionContributionItem(open(path, recent.indexOf(path) + 1)))
                .toArray(IContributionItem[]::new);
    }

    private static Action open(Path path, int number) {
        // An ampersand in a name is no mark of a key, and a tab would begin a shortcut.
        String name = path.getFileName().toString().replace("&", "&&").replace('\t', ' ');
        String folder = String.valueOf(path.getParent()).replace("&", "&&").replace('\t', ' ');
        return new Action(TEXTS.text("openRecent.event", "number", number, "name", name, "folder", folder)) {
            @Override
            public void run() {
                OpenEvent.open(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell(), path);
            }
        };
    }
}
