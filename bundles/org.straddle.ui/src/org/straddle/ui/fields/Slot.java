package org.straddle.ui.fields;

import java.util.function.Function;
import java.util.function.Supplier;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.straddle.ui.session.Edit;
import org.straddle.ui.session.EventSession;

/** Where a field's value lives, and the command that changes it. */
public record Slot<T>(Supplier<T> get, Function<T, Command> set) {

    /** A feature of an object. */
    @SuppressWarnings("unchecked")
    public static <T> Slot<T> of(EventSession session, EObject owner, EStructuralFeature feature) {
        return new Slot<>(() -> (T) owner.eGet(feature),
                value -> Edit.set(session.editingDomain(), owner, feature, value));
    }

    /** A feature of a part that the object may not have yet; the part is made with the first value. */
    @SuppressWarnings("unchecked")
    public static <T> Slot<T> inside(EventSession session, EObject owner, EReference part,
            EStructuralFeature feature) {
        return new Slot<>(() -> {
            EObject present = (EObject) owner.eGet(part);
            EObject holder = present == null ? EcoreUtil.create(part.getEReferenceType()) : present;
            return (T) holder.eGet(feature);
        }, value -> {
            EObject present = (EObject) owner.eGet(part);
            if (present != null) {
                return Edit.set(session.editingDomain(), present, feature, value);
            }
            EObject made = EcoreUtil.create(part.getEReferenceType());
            made.eSet(feature, value);
            return Edit.set(session.editingDomain(), owner, part, made);
        });
    }
}
