package monochord.file;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The fingerprint of a file's content: SHA-256 (FIPS 180-4) in 64 hexadecimal digits. */
public final class Digest {
    private Digest() {}

    public static String of(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException("every Java knows SHA-256", never);
        }
    }

    /** Of the text in UTF-8. */
    public static String of(String text) {
        return of(text.getBytes(StandardCharsets.UTF_8));
    }
}
