package org.coursewright.core.session;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

import org.coursewright.model.project.Marked;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.Resource.Diagnostic;
import org.eclipse.emf.ecore.xmi.ClassNotFoundException;
import org.eclipse.emf.ecore.xmi.FeatureNotFoundException;
import org.eclipse.emf.ecore.xmi.IllegalValueException;
import org.eclipse.emf.ecore.xmi.PackageNotFoundException;
import org.eclipse.emf.ecore.xmi.UnresolvedReferenceException;

/** Puts what EMF found wrong with a file into plain words. */
final class LoadFault {

    private LoadFault() {
    }

    /**
     * @param file that was read
     * @param resource with the errors found
     * @param failure that ended the reading, or null
     * @return the exception to throw
     */
    static ProjectFileException of(Path file, Resource resource, Exception failure) {
        List<Diagnostic> errors = resource.getErrors();
        if (errors.isEmpty()) {
            return new ProjectFileException(file, "the file cannot be read as a project. " + ProjectText.RESTORE,
                    failure);
        }
        Diagnostic first = errors.get(0);
        String others = switch (errors.size()) {
            case 1 -> "";
            case 2 -> " One more fault follows.";
            default -> " %d more faults follow.".formatted(errors.size() - 1);
        };
        Throwable cause = first instanceof Throwable thrown ? thrown : failure;
        return new ProjectFileException(file, new Place(first.getLine(), first.getColumn()), words(first) + others,
                cause);
    }

    private static String words(Diagnostic fault) {
        if (fault instanceof FeatureNotFoundException unknown) {
            return "%s has no \"%s\". Correct or remove it.".formatted(element(unknown.getObject()),
                    Shown.of(unknown.getName()));
        }
        if (fault instanceof IllegalValueException illegal) {
            return illegalValue(illegal);
        }
        if (fault instanceof UnresolvedReferenceException dangling) {
            return "there is no element \"%s\" in this file to refer to. Correct or remove the reference."
                    .formatted(Shown.of(dangling.getReference()));
        }
        if (fault instanceof ClassNotFoundException unknown) {
            return "\"%s\" is no kind of element that a project has. Correct or remove it."
                    .formatted(Shown.of(unknown.getName()));
        }
        if (fault instanceof PackageNotFoundException unknown) {
            return "\"%s\" is no part of the project schema. Correct or remove it.".formatted(Shown.of(unknown.uri()));
        }
        if (fault instanceof StrayTextException stray) {
            return "the text \"%s\" is out of place here. Remove it.".formatted(Shown.of(stray.text()));
        }
        return "this cannot be read as part of a project. " + ProjectText.RESTORE;
    }

    private static String illegalValue(IllegalValueException fault) {
        EStructuralFeature feature = fault.getFeature();
        if (fault.getValue() instanceof EObject || fault.getValue() == null) {
            return "the %s of %s cannot be this element, or is given twice. Correct or remove it."
                    .formatted(feature.getName(), element(fault.getObject()));
        }
        return "the %s of %s cannot be \"%s\": %s.".formatted(feature.getName(), element(fault.getObject()),
                Shown.of(fault.getValue().toString()), expected(feature));
    }

    private static String expected(EStructuralFeature feature) {
        if (feature.getEType() instanceof EEnum choice) {
            return "write one of " + choice.getELiterals().stream().map(EEnumLiteral::getLiteral)
                    .collect(Collectors.joining(", "));
        }
        return switch (feature.getEType().getName()) {
            case "Length" -> "write millimetres with the unit, such as 3759.2 mm";
            case "Money" -> "write an amount and its ISO 4217 code, such as 1.25 USD";
            case "Quantity" -> "write a number and its UN/ECE code, such as 3.5 MTQ";
            case "Date" -> "write a date such as 2026-03-31";
            case "Time" -> "write a time such as 07:30";
            case "Moment" -> "write a moment such as 2026-03-31T07:30:00Z";
            case "EInt" -> "write a whole number";
            case "EBigDecimal" -> "write a number such as 12.5";
            case "EBoolean" -> "write true or false";
            default -> "correct or remove it";
        };
    }

    private static String element(EObject object) {
        if (object == null) {
            return "the project";
        }
        EClass kind = object.eClass();
        boolean marked = object instanceof Marked named && named.getMark() != null;
        return marked ? "%s %s".formatted(kind.getName(), Shown.of(((Marked) object).getMark())) : kind.getName();
    }
}
