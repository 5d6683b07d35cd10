package org.straddle.ui.workbench;

import java.util.function.Consumer;

import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.straddle.model.Identified;
import org.straddle.ui.editors.Revealing;
import org.straddle.ui.editors.ThingInput;
import org.straddle.ui.explorer.ExplorerView;
import org.straddle.ui.things.Kind;
import org.straddle.ui.work.Problem;
import org.straddle.words.Catalogue;

/** Opens the editor of a thing, or of the nearest thing around it that has one, and selects it in the explorer. */
final class Reveal implements Consumer<Identified> {

    private static final Catalogue TEXTS = Catalogue.of(Reveal.class);

    private final IWorkbenchWindow window;

    Reveal(IWorkbenchWindow window) {
        this.window = window;
    }

    @Override
    public void accept(Identified thing) {
        IWorkbenchPage page = window.getActivePage();
        Identified edited = Kind.edited(thing);
        try {
            IEditorPart editor = page.openEditor(new ThingInput(edited), Kind.of(edited).orElseThrow().editorId());
            if (editor instanceof Revealing revealing && thing != edited) {
                revealing.reveal(thing);
            }
        } catch (PartInitException failure) {
            Problem.show(window.getShell(), TEXTS.text("reveal.failed"), failure);
        }
        if (page.findView(ExplorerView.ID) instanceof ExplorerView explorer) {
            explorer.select(thing);
        }
    }
}
