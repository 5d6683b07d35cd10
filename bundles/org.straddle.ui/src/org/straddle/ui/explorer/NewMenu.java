package org.straddle.ui.explorer;

import java.util.function.Consumer;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuCreator;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.ToolItem;
import org.straddle.ui.parts.Act;
import org.straddle.ui.things.Icons;
import org.straddle.ui.things.Kind;
import org.straddle.words.Catalogue;

/** A tool with a list of all kinds of things that can be made. */
final class NewMenu extends Action implements IMenuCreator {

    private static final Catalogue TEXTS = Catalogue.of(NewMenu.class);

    private final Consumer<Kind> make;
    private Menu menu;

    NewMenu(Consumer<Kind> make) {
        super(TEXTS.text("newMenu.new"), IAction.AS_DROP_DOWN_MENU);
        this.make = make;
        setImageDescriptor(Icons.descriptor("add"));
        setToolTipText(TEXTS.text("newMenu.new.tooltip"));
        setMenuCreator(this);
    }

    @Override
    public void runWithEvent(Event click) {
        if (click.widget instanceof ToolItem tool) {
            Menu list = getMenu(tool.getParent());
            list.setLocation(tool.getParent().toDisplay(tool.getBounds().x,
                    tool.getBounds().y + tool.getBounds().height));
            list.setVisible(true);
        }
    }

    @Override
    public Menu getMenu(Control parent) {
        dispose();
        menu = new Menu(parent);
        Group.ALL.stream().map(Group::kind).forEach(kind -> new ActionContributionItem(new Act(
                TEXTS.text("newMenu.kind", "kind", kind.word()), kind.icon(), () -> make.accept(kind))).fill(menu, -1));
        return menu;
    }

    @Override
    public Menu getMenu(Menu parent) {
        return null;
    }

    @Override
    public void dispose() {
        if (menu != null) {
            menu.dispose();
        }
    }
}
