package org.wickwise.report;

import java.util.List;
import org.commonmark.ext.heading.anchor.HeadingAnchorExtension;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/** A page for a browser or a printer, made of Markdown; raw HTML in it is shown as text. */
public final class HtmlPage {

    private static final String HEAD =
            """
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <title>%s</title>
            <style>
            body { font: 1rem/1.5 Georgia, serif; max-width: 46rem; margin: 2rem auto; padding: 0 1rem; color: #1b1b1b; }
            h1, h2, h3 { font-family: system-ui, sans-serif; line-height: 1.25; }
            h2 { border-top: 2px solid #1b1b1b; margin-top: 3rem; padding-top: .5rem; }
            h3 { margin-top: 2.25rem; margin-bottom: .25rem; }
            blockquote { margin: .25rem 0 .75rem; padding-left: 1rem; border-left: 4px solid #8a8a8a; }
            ul { margin: .25rem 0 .75rem; padding-left: 1.25rem; }
            code { background: #f0f0f0; padding: 0 .2em; }
            @media print { body { max-width: none; font-size: 10pt; } h3, blockquote { break-after: avoid; } }
            %s</style>
            </head>
            <body>
            """;

    static final String END = "</body>\n</html>\n";

    private HtmlPage() {}

    public static String of(String title, String markdown) {
        HtmlRenderer renderer = HtmlRenderer.builder()
                .extensions(List.of(HeadingAnchorExtension.create()))
                .escapeHtml(true)
                .build();
        String body = renderer.render(Parser.builder().build().parse(markdown));
        return head(title, "") + body + END;
    }

    /** A page up to the first word of its body. */
    static String head(String title, String moreStyle) {
        return HEAD.formatted(title.replace("&", "&amp;").replace("<", "&lt;"), moreStyle);
    }
}
