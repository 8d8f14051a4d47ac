package org.wickwise.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.wickwise.bench.Case;
import org.wickwise.bench.CaseReader;
import org.wickwise.substance.SolventData;
import org.wickwise.text.Folders;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.ProblemsFound;
import org.wickwise.text.YamlFile;

/** The cases by which a change of the rules is looked at: shipped examples, published ones and an instructor's own. */
final class KnownCases {

    private static final List<String> SHIPPED = List.of("docs/examples", "docs/published");

    private KnownCases() {}

    /**
     * Every case of the shipped folders and these.
     *
     * @throws ProblemsFound when a folder or a case of it cannot be read
     */
    static List<Case> in(List<Path> own, SolventData data) {
        List<Case> cases = new ArrayList<>();
        for (String folder : SHIPPED) {
            cases.addAll(casesOf(Workbench.home().resolve(folder), data));
        }
        own.forEach(folder -> cases.addAll(casesOf(folder, data)));
        return List.copyOf(cases);
    }

    /** Of entries of a notebook those with a column count; files that are no cases, such as shelves and lessons, do not. */
    private static List<Case> casesOf(Path folder, SolventData data) {
        return Folders.files(folder, "a folder with case files", "check the spelling and who may read it").stream()
                .filter(file -> file.toString().endsWith(".yaml"))
                .map(YamlFile::read)
                .filter(KnownCases::isCase)
                .map(root -> CaseReader.of(root.where(CaseReader.KEYS::contains), data))
                .toList();
    }

    private static boolean isCase(Mapping root) {
        return Stream.of("strips", "column", "setting")
                        .allMatch(key -> root.value(key).isPresent())
                && root.value("class").isEmpty();
    }
}
