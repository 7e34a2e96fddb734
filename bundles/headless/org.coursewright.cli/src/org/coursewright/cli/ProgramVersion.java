package org.coursewright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.Collections;
import java.util.jar.Attributes;
import java.util.jar.Manifest;

import picocli.CommandLine.IVersionProvider;

/** Tells the version of the bundle that this class is in. */
final class ProgramVersion implements IVersionProvider {

    private static final String BUNDLE = "org.coursewright.cli";

    @Override
    public String[] getVersion() throws IOException {
        for (URL url : Collections.list(ProgramVersion.class.getClassLoader().getResources("META-INF/MANIFEST.MF"))) {
            try (InputStream in = url.openStream()) {
                Attributes manifest = new Manifest(in).getMainAttributes();
                if (String.valueOf(manifest.getValue("Bundle-SymbolicName")).startsWith(BUNDLE)) {
                    return new String[]{"coursewright " + manifest.getValue("Bundle-Version")};
                }
            }
        }
        return new String[]{"coursewright (not built as a bundle)"};
    }
}
