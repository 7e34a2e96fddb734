package org.coursewright.core.session;

import java.util.Map;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.xmi.IllegalValueException;
import org.eclipse.emf.ecore.xmi.UnresolvedReferenceException;
import org.eclipse.emf.ecore.xmi.XMIException;
import org.eclipse.emf.ecore.xmi.XMLHelper;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.emf.ecore.xmi.impl.SAXXMIHandler;

/** Builds a project from XML, and reports as faults what EMF would pass over in silence. */
final class ProjectHandler extends SAXXMIHandler {

    private static final int MOST_FAULTS = 100;

    ProjectHandler(XMLResource resource, XMLHelper helper, Map<?, ?> options) {
        super(resource, helper, options);
    }

    /** A file of nothing but faults is given up after some. */
    @Override
    public void error(XMIException fault) {
        super.error(fault);
        if (xmlResource.getErrors().size() >= MOST_FAULTS) {
            throw new IllegalStateException(fault);
        }
    }

    /** References into other files. */
    @Override
    protected void handleProxy(InternalEObject proxy, String uri) {
        error(new UnresolvedReferenceException(uri, getLocation(), getLineNumber(), getColumnNumber()));
    }

    /** A second value where there can be one only would replace the first. */
    @Override
    protected void setFeatureValue(EObject object, EStructuralFeature feature, Object value, int position) {
        if (!feature.isMany() && value instanceof EObject && object.eIsSet(feature) && object.eGet(feature) != value) {
            error(new IllegalValueException(object, feature, value, null, getLocation(), getLineNumber(),
                    getColumnNumber()));
        } else {
            super.setFeatureValue(object, feature, value, position);
        }
    }

    /** Text where no value is expected. */
    @Override
    public void characters(char[] characters, int start, int length) {
        if (text == null) {
            String stray = new String(characters, start, length).strip();
            if (!stray.isEmpty()) {
                error(new StrayTextException(stray, getLocation(), getLineNumber(), getColumnNumber()));
            }
        }
        super.characters(characters, start, length);
    }
}
