package monochord.view.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import monochord.text.SafeText;
import org.apache.commons.text.StringEscapeUtils;

/**
 * A section of a page. Whatever text goes in, what is written is that text: it can open no element and no attribute.
 *
 * <p>Source: OWASP Cross Site Scripting Prevention, the rules for HTML content and for quoted attributes; from memory.
 */
public sealed interface Html {
    Set<String> VOID = Set.of("meta", "br", "hr");
    /** Of an element or an attribute. */
    Pattern NAME = Pattern.compile("[a-zA-Z][a-zA-Z0-9-]*");

    /** Markup as it stands in the file. */
    String write();

    /** Text, shown as it is. */
    record Text(String text) implements Html {
        @Override
        public String write() {
            return escaped(text);
        }
    }

    /** An element with its attributes and what it holds. */
    record Element(String name, Map<String, String> attributes, List<Html> content) implements Html {
        /** @throws IllegalArgumentException if a name is not made of letters, digits and hyphens */
        public Element {
            check(name);
            attributes.keySet().forEach(Html::check);
            content = List.copyOf(content);
        }

        public Element with(String attribute, String value) {
            Map<String, String> more = new LinkedHashMap<>(attributes);
            more.put(attribute, value);
            return new Element(name, more, content);
        }

        public Element holding(Html... more) {
            return holding(List.of(more));
        }

        public Element holding(List<? extends Html> more) {
            List<Html> all = new ArrayList<>(content);
            all.addAll(more);
            return new Element(name, attributes, all);
        }

        public Element holding(String text) {
            return holding(new Text(text));
        }

        @Override
        public String write() {
            StringBuilder markup = new StringBuilder("<").append(name);
            attributes.forEach((attribute, value) -> markup.append(' ')
                    .append(attribute)
                    .append("=\"")
                    .append(escaped(value))
                    .append('"'));
            markup.append('>');
            if (!VOID.contains(name)) {
                content.forEach(part -> markup.append(part.write()));
                markup.append("</").append(name).append('>');
            }
            return markup.toString();
        }
    }

    /** A style sheet of ours, which nothing from outside can be part of. */
    record Sheet(String css) implements Html {
        @Override
        public String write() {
            return "<style>" + css + "</style>";
        }
    }

    static Element element(String name) {
        return new Element(name, Map.of(), List.of());
    }

    static Html text(String text) {
        return new Text(text);
    }

    private static void check(String name) {
        if (!NAME.matcher(name).matches()) {
            throw new IllegalArgumentException("not a name in a page: " + name);
        }
    }

    private static String escaped(String text) {
        return StringEscapeUtils.escapeXml10(SafeText.clean(text));
    }
}
