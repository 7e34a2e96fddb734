package org.coursewright.workbench.internal.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.MalformedURLException;
import java.net.URI;
import java.net.URL;

import org.eclipse.osgi.service.datalocation.Location;
import org.junit.jupiter.api.Test;

class SettingsFolderTest {

    @Test
    void folderIsHeldUntilTheWorkbenchIsClosed() {
        FakeLocation location = new FakeLocation(true);
        try (SettingsFolder folder = SettingsFolder.of(location)) {
            assertThat(folder.isOurs()).isTrue();
            assertThat(location.released).isFalse();
        }
        assertThat(location.released).isTrue();
    }

    @Test
    void folderOfAnotherWorkbenchIsNamedAndLeftToIt() {
        FakeLocation location = new FakeLocation(false);
        try (SettingsFolder folder = SettingsFolder.of(location)) {
            assertThat(folder.isOurs()).isFalse();
            assertThat(folder.explanation()).contains("/home/ana/settings/").contains("-data");
        }
        assertThat(location.released).isFalse();
    }

    @Test
    void folderThatCannotBeWrittenToIsToldWithTheReason() {
        try (SettingsFolder folder = SettingsFolder.of(new FakeLocation(true) {
            @Override
            public boolean lock() throws IOException {
                throw new IOException("read-only disk");
            }
        })) {
            assertThat(folder.isOurs()).isFalse();
            assertThat(folder.explanation()).contains("read-only disk");
        }
    }

    /** A place that another workbench holds, or nobody does. */
    private static class FakeLocation implements Location {

        private final boolean free;
        private boolean released;

        FakeLocation(boolean free) {
            this.free = free;
        }

        @Override
        public boolean lock() throws IOException {
            return free;
        }

        @Override
        public void release() {
            released = true;
        }

        @Override
        public URL getURL() {
            try {
                return URI.create("file:/home/ana/settings/").toURL();
            } catch (MalformedURLException e) {
                throw new IllegalStateException(e);
            }
        }

        @Override
        public boolean allowsDefault() {
            return false;
        }

        @Override
        public URL getDefault() {
            return getURL();
        }

        @Override
        public Location getParentLocation() {
            return null;
        }

        @Override
        public boolean isSet() {
            return true;
        }

        @Override
        public boolean isReadOnly() {
            return false;
        }

        @Override
        public boolean setURL(URL value, boolean lock) {
            throw new UnsupportedOperationException();
        }

        @Override
        public boolean set(URL value, boolean lock) {
            throw new UnsupportedOperationException();
        }

        @Override
        public boolean set(URL value, boolean lock, String lockFilePath) {
            throw new UnsupportedOperationException();
        }

        @Override
        public boolean isLocked() {
            return !free;
        }

        @Override
        public Location createLocation(Location parent, URL defaultValue, boolean readonly) {
            throw new UnsupportedOperationException();
        }

        @Override
        public URL getDataArea(String path) {
            return getURL();
        }
    }
}
