package org.coursewright.diagram.ui.editor;

import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.ui.IMemento;
import org.eclipse.ui.IPersistableElement;

/**
 * What is kept of an element from one start to the next, so that its editor opens again.
 *
 * @param file of the project
 * @param id of the element in it
 */
record StoredElement(Path file, String id) implements IPersistableElement {

    private static final String FILE = "file";
    private static final String ID = "element";

    /** @return what was kept, empty if it is not whole */
    static Optional<StoredElement> in(IMemento memento) {
        String file = memento.getString(FILE);
        String id = memento.getString(ID);
        return file == null || id == null ? Optional.empty() : Optional.of(new StoredElement(Path.of(file), id));
    }

    @Override
    public void saveState(IMemento memento) {
        memento.putString(FILE, file.toAbsolutePath().toString());
        memento.putString(ID, id);
    }

    @Override
    public String getFactoryId() {
        return StoredElementFactory.ID;
    }
}
