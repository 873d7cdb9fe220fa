package monochord.view.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import monochord.text.Phrase;
import monochord.text.Reader;

/**
 * A notebook as one page that needs nothing else: no script, no network. The page itself forbids both by its content
 * security policy, so that even a fault of ours could fetch and run nothing.
 *
 * <p>Source: Content Security Policy Level 3, W3C; OWASP Content Security Policy, both from memory.
 *
 * @param title the first heading, and the name of the window
 * @param reader whose language the words around the sections are in
 */
public record WebPage(Phrase title, List<PageSection> sections, Reader reader) {
    private static final Phrase CAUTION = Phrase.sentence("Start with the volume low, most of all in headphones.");

    public WebPage {
        sections = List.copyOf(sections);
    }

    /** The whole file, in UTF-8. */
    public String write() {
        return page(title, body(), reader);
    }

    /** A page with this content, in UTF-8; nothing in it can run or be fetched either. */
    public static String page(Phrase title, Html.Element body, Reader reader) {
        String sheet = sheet();
        Html.Element head = Html.element("head")
                .holding(Html.element("meta").with("charset", "utf-8"))
                .holding(Html.element("meta")
                        .with("http-equiv", "Content-Security-Policy")
                        .with("content", policy(sheet)))
                .holding(Html.element("meta")
                        .with("name", "viewport")
                        .with("content", "width=device-width, initial-scale=1"))
                .holding(Html.element("meta").with("name", "generator").with("content", "Monochord"))
                .holding(Html.element("title").holding(title.in(reader).plain()))
                .holding(new Html.Sheet(sheet));
        Html.Element page = Html.element("html")
                .with("lang", reader.language().tag())
                .holding(head)
                .holding(body);
        return "<!DOCTYPE html>\n" + page.write() + "\n";
    }

    private static String policy(String sheet) {
        return "default-src 'none'; media-src data:; style-src 'sha256-" + digest(sheet) + "'";
    }

    private static String digest(String sheet) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(sheet.getBytes(StandardCharsets.UTF_8));
            return Base64.getEncoder().encodeToString(hash);
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException("every Java knows SHA-256", never);
        }
    }

    private static String sheet() {
        try (InputStream sheet = WebPage.class.getResourceAsStream("page.css")) {
            return new String(sheet.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException("our own style sheet cannot be read", broken);
        }
    }

    private String words(Phrase phrase) {
        return phrase.in(reader).plain();
    }

    private Html.Element body() {
        Html.Element main = Html.element("main").holding(Html.element("h1").holding(words(title)));
        boolean sounds = sections.stream()
                .anyMatch(section -> section instanceof PageSection.AnsweredLine one
                        && one.sound().isPresent());
        if (sounds) {
            main = main.holding(Html.element("p").with("class", "listening").holding(words(CAUTION)));
        }
        int number = 0;
        for (PageSection section : sections) {
            main = section instanceof PageSection.OwnWords words
                    ? main.holding(ProseElements.of(words.blocks()))
                    : main.holding(WebExchange.of((PageSection.AnsweredLine) section, ++number));
        }
        return Html.element("body").holding(main);
    }
}
