package org.coursewright.estimate.ui.part;

import java.util.Arrays;
import java.util.Map;
import java.util.stream.Collectors;

import org.eclipse.core.commands.IParameterValues;

/** The parts of an estimate, for quick access and the page of keys. */
public final class EstimateParts implements IParameterValues {

    @Override
    public Map<?, ?> getParameterValues() {
        return Arrays.stream(EstimatePart.values()).collect(Collectors.toMap(EstimatePart::title, EstimatePart::key));
    }
}
