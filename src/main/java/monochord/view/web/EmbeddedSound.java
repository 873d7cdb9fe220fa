package monochord.view.web;

import java.util.Base64;
import monochord.text.Phrase;

/**
 * A recording that is part of the page.
 *
 * @param name what is heard, for whoever cannot see where the button stands
 * @param type the media type, such as {@code audio/mpeg}
 * @param seconds how long it is, rounded
 */
public record EmbeddedSound(Phrase name, String type, int seconds, byte[] content) {
    public EmbeddedSound {
        content = content.clone();
    }

    @Override
    public byte[] content() {
        return content.clone();
    }

    String address() {
        return "data:" + type + ";base64," + Base64.getEncoder().encodeToString(content);
    }
}
