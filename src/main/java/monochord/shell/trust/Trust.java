package monochord.shell.trust;

import java.io.IOException;
import java.nio.file.Path;

/**
 * Whose code may run. A file from elsewhere is data until a person has said yes to it, and the yes is for its content.
 *
 * <p>Source of the attack classes: OWASP Top 10:2021, "A03 Injection" and "A08 Software and Data Integrity Failures", titles
 * from memory.
 */
public interface Trust {
    /**
     * @param file where the content was read
     * @param digest of that content
     */
    boolean isTrusted(Path file, String digest);

    /**
     * A person has said yes.
     *
     * @param name for whoever reads the list of what is trusted
     * @throws IOException if it cannot be kept
     */
    void trust(String digest, String name) throws IOException;

    /** The same, where a yes is nobody's and changes nothing. */
    default Trust unmoved() {
        return new Trust() {
            @Override
            public boolean isTrusted(Path file, String digest) {
                return Trust.this.isTrusted(file, digest);
            }

            @Override
            public void trust(String digest, String name) {
                // a yes in a sitting that is closed off is nobody's
            }
        };
    }

    /** Nobody's, and no yes changes it. */
    static Trust none() {
        return new Trust() {
            @Override
            public boolean isTrusted(Path file, String digest) {
                return false;
            }

            @Override
            public void trust(String digest, String name) {
                // nobody said it
            }
        };
    }
}
