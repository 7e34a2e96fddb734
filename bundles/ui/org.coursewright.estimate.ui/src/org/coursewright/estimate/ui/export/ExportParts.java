package org.coursewright.estimate.ui.export;

import java.util.Arrays;
import java.util.Map;
import java.util.stream.Collectors;

import org.eclipse.core.commands.IParameterValues;

/** What can be written, for quick access and the page of keys. */
public final class ExportParts implements IParameterValues {

    @Override
    public Map<?, ?> getParameterValues() {
        return Arrays.stream(ReportKind.values()).collect(Collectors.toMap(ReportKind::title, ReportKind::key));
    }
}
