package org.coursewright.exchange.sheet.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

import org.coursewright.exchange.sheet.Sheet;

/** A folder that sheets are written to. */
public final class SheetFolder {

    private final Path folder;

    /** @param folder where the files go, not null; it is made if its own folder exists */
    public SheetFolder(Path folder) {
        this.folder = folder;
    }

    /**
     * Writes sheets, over older ones of the same walls. All are written beside first, so that a full disk leaves none
     * half-written.
     *
     * @param sheets with marks that differ, not null
     * @param form of the files, not null
     * @return by wall mark the names of its files in the folder
     * @throws IOException if they cannot be written; older files are then untouched unless moving them failed halfway
     */
    public Map<String, List<String>> write(List<Sheet> sheets, SheetForm form) throws IOException {
        SheetNames names = new SheetNames();
        Map<String, List<String>> written = new LinkedHashMap<>();
        List<SheetFile> files = new ArrayList<>();
        for (Sheet sheet : sheets) {
            List<SheetFile> ofSheet = form.files(names.of(sheet.mark()), sheet);
            files.addAll(ofSheet);
            written.put(sheet.mark(), ofSheet.stream().map(SheetFile::name).toList());
        }
        write(files);
        return written;
    }

    private void write(List<SheetFile> files) throws IOException {
        if (!Files.isDirectory(folder)) {
            Files.createDirectory(folder);
        }
        Map<Path, Path> targets = new LinkedHashMap<>();
        try {
            for (SheetFile file : files) {
                Path target = folder.resolve(file.name());
                Path beside = folder.resolve(".%s.%s.tmp".formatted(file.name(), UUID.randomUUID()));
                targets.put(beside, target);
                Files.write(beside, file.content());
            }
            for (Map.Entry<Path, Path> move : targets.entrySet()) {
                Files.move(move.getKey(), move.getValue(), StandardCopyOption.ATOMIC_MOVE);
            }
        } finally {
            for (Path beside : targets.keySet()) {
                Files.deleteIfExists(beside);
            }
        }
    }
}
