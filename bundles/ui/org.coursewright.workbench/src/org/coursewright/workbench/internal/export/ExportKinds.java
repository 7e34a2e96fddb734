package org.coursewright.workbench.internal.export;

import java.util.Arrays;
import java.util.Map;
import java.util.stream.Collectors;

import org.eclipse.core.commands.IParameterValues;

/** What can be written, for quick access and the page of keys. */
public final class ExportKinds implements IParameterValues {

    @Override
    public Map<?, ?> getParameterValues() {
        return Arrays.stream(ExportKind.values()).collect(Collectors.toMap(ExportKind::label, ExportKind::command));
    }
}
