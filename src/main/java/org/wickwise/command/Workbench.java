package org.wickwise.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.wickwise.bench.Case;
import org.wickwise.bench.CaseReader;
import org.wickwise.plan.Plan;
import org.wickwise.plan.Planner;
import org.wickwise.rulebook.Judge;
import org.wickwise.rulebook.Rulebook;
import org.wickwise.rulebook.ShippedRules;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.SolventDataReader;
import org.wickwise.text.ProblemsFound;

/** Solvents, rules and planner, laid out to work on cases. Costs seconds to lay out; reading a case costs little. */
public final class Workbench {

    /** The system property that names the folder with {@code rules} and {@code solvent-data}. */
    static final String HOME_PROPERTY = "wickwise.home";

    /** The system property that names the folder for compiled rules. */
    static final String CACHE_PROPERTY = "wickwise.cache";

    private final SolventData data;
    private final Judge judge;
    private final Planner planner;

    private Workbench(SolventData data, Judge judge, Planner planner) {
        this.data = data;
        this.judge = judge;
        this.planner = planner;
    }

    /** @throws ProblemsFound when the rules or the solvent data have problems */
    public static Workbench in(Path home) {
        return in(home, Optional.empty());
    }

    /**
     * @param ownRules a folder with an instructor's own rules; empty where there is none
     * @throws ProblemsFound when the rules or the solvent data have problems
     */
    static Workbench in(Path home, Optional<Path> ownRules) {
        ShippedRules shipped = shippedUnless(ownRules);
        SolventData data = SolventDataReader.read(home.resolve("solvent-data"));
        Rulebook rulebook = Rulebook.read(home.resolve("rules"), ownRules.map(Workbench::named), data);
        return new Workbench(data, Judge.of(rulebook, data, compiledRules(), shipped), new Planner(rulebook));
    }

    /** The folder the start script names, or the folder the program was started in. */
    static Path home() {
        return Path.of(System.getProperty(HOME_PROPERTY, ""));
    }

    /** Where compiled rules are kept: the folder the property names, or the usual one in the home folder. */
    public static Path compiledRules() {
        String named = System.getProperty(CACHE_PROPERTY);
        return named == null ? Path.of(System.getProperty("user.home"), ".cache", "wickwise") : Path.of(named);
    }

    /**
     * Lays out rules and planner for a case that was read.
     *
     * @throws ProblemsFound when the rules have problems
     */
    static Desk deskFor(Case written, SolventData data, Optional<Path> ownRules) {
        ShippedRules shipped = shippedUnless(ownRules);
        Rulebook rulebook = Rulebook.read(home().resolve("rules"), ownRules.map(Workbench::named), data);
        return new Desk(written, data, Judge.of(rulebook, data, compiledRules(), shipped), new Planner(rulebook));
    }

    /** The solvent data beside the program. */
    static SolventData solventData() {
        return SolventDataReader.read(home().resolve("solvent-data"));
    }

    /**
     * Reads a case before anything costly is laid out, so that a mistake in it is told at once.
     *
     * @throws ProblemsFound when the case, the rules or the solvent data have problems
     */
    static Desk deskFor(Path caseFile, Optional<Path> ownRules) {
        Path home = home();
        ShippedRules shipped = shippedUnless(ownRules);
        SolventData data = SolventDataReader.read(home.resolve("solvent-data"));
        Case written = CaseReader.read(named(caseFile), data);
        Rulebook rulebook = Rulebook.read(home.resolve("rules"), ownRules.map(Workbench::named), data);
        return new Desk(written, data, Judge.of(rulebook, data, compiledRules(), shipped), new Planner(rulebook));
    }

    private static ShippedRules shippedUnless(Optional<Path> ownRules) {
        return ownRules.isPresent() ? ShippedRules.none() : ShippedRules.loading();
    }

    public SolventData data() {
        return data;
    }

    public Judge judge() {
        return judge;
    }

    Planner planner() {
        return planner;
    }

    public Plan plan(Case written) {
        return planner.plan(judge.judge(written));
    }

    /** A file or folder as it was named, or the one of that name beside the program. */
    static Path named(Path path) {
        Path beside = home().resolve(path);
        return !Files.exists(path) && Files.exists(beside) ? beside : path;
    }
}
