package org.wickwise;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.commonmark.ext.heading.anchor.IdGenerator;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.junit.jupiter.api.Test;

/** The links between the documents, down to the headings they point at. */
class DocumentLinksTest {

    @Test
    void theFilesAndHeadingsThatDocumentsPointAtAreThere() throws IOException {
        List<String> missing = new ArrayList<>();
        int found = 0;
        for (Path document : DocumentedExamplesTest.documents()) {
            for (String link : linksOf(document)) {
                found++;
                if (!leadsSomewhere(document, link)) {
                    missing.add(document + " points at " + link);
                }
            }
        }
        assertThat(missing).isEmpty();
        assertThat(found).isGreaterThan(40);
    }

    private static boolean leadsSomewhere(Path document, String link) throws IOException {
        String[] parts = link.split("#", 2);
        Path file = parts[0].isEmpty() ? document : document.resolveSibling(parts[0]);
        return Files.exists(file) && (parts.length < 2 || headingsOf(file).contains(parts[1]));
    }

    /** Links and pictures; those that leave the documents are passed over. */
    private static List<String> linksOf(Path document) throws IOException {
        List<String> links = new ArrayList<>();
        parsed(document).accept(new AbstractVisitor() {
            @Override
            public void visit(Link link) {
                links.add(link.getDestination());
                visitChildren(link);
            }

            @Override
            public void visit(Image image) {
                links.add(image.getDestination());
            }
        });
        return links.stream().filter(link -> !link.contains(":")).toList();
    }

    private static Set<String> headingsOf(Path document) throws IOException {
        Set<String> headings = new TreeSet<>();
        IdGenerator ids = IdGenerator.builder().build();
        parsed(document).accept(new AbstractVisitor() {
            @Override
            public void visit(Heading heading) {
                headings.add(ids.generateId(wordsOf(heading)));
            }
        });
        return headings;
    }

    private static String wordsOf(Node heading) {
        StringBuilder words = new StringBuilder();
        heading.accept(new AbstractVisitor() {
            @Override
            public void visit(Text text) {
                words.append(text.getLiteral());
            }

            @Override
            public void visit(Code code) {
                words.append(code.getLiteral());
            }
        });
        return words.toString();
    }

    private static Node parsed(Path document) throws IOException {
        return Parser.builder().build().parse(Files.readString(document));
    }
}
