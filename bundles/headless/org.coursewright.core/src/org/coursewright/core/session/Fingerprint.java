package org.coursewright.core.session;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The SHA-256 of some content, which tells whether a file is still the one that edits started from. */
record Fingerprint(String hex) {

    static Fingerprint of(byte[] content) {
        try {
            return new Fingerprint(HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256.", e);
        }
    }
}
