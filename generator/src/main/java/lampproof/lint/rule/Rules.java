package lampproof.lint.rule;

import java.util.List;

/** All rules, in the order in which findings on one place are told. */
public final class Rules {

    /** Every rule once. */
    public static final List<Rule> ALL = List.of(
            // files that do harm
            new HiddenCommand(),
            new ForbiddenCommand(),
            new ForbiddenVariable(),
            new DisguisedVariable(),
            new Redirection(),
            new OutsidePath(),
            new ForbiddenModel(),
            // files that hide lines
            new ControlBlock(),
            new ControlCharacter(),
            new BackslashContinuation(),
            new EarlyEnd(),
            // lines that are read in another way than they look
            new SwallowedTitle(),
            new Placeholder(),
            new NonAscii(),
            new LeadingBlank(),
            new EndOfLineComment(),
            new BlankInFileName(),
            // values
            new ScaleLetter(),
            new UnreadTail(),
            new DecimalComma(),
            new NotANumber(),
            new MissingValue(),
            new SecondValue(),
            new PulseEdges(),
            // names
            new DuplicateName(),
            new LetterCase(),
            new GroundName(),
            new MissingInclude(),
            new MissingModel(),
            new MissingSubcircuit(),
            new RecursiveSubcircuit(),
            new PortCount(),
            new UnknownModelParameter(),
            new UnknownVector(),
            // the circuit
            new SourceLoop(),
            new NoDcPath(),
            new CurrentCutSet(),
            new OneConnection(),
            new StepOnOwnOutput(),
            // the analysis
            new NoAnalysis(),
            new NoEnd(),
            new SourceAcrossCapacitor(),
            new UnusedInitialCondition(),
            new InterpolatedOutput(),
            new TrapezoidalSwitching(),
            new MissingSave());

    private Rules() {}
}
