package org.rafterbook.app;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line as a whole. */
@Command(
        name = "rafterbook",
        description = "Flight-session logbook with trim analytics. Without a command the window opens.",
        scope = CommandLine.ScopeType.INHERIT,
        mixinStandardHelpOptions = true,
        subcommands = {
            MarginCommand.class,
            AirCommand.class,
            MotorCommand.class,
            ReviewCommand.class,
            FlightsCommand.class,
            SeasonCommand.class,
            ImportCommand.class,
            ExportCommand.class,
            CheckCommand.class,
            BackupCommand.class,
            JoinCommand.class
        })
final class Commands implements Runnable {

    private final PrintWriter out;

    Commands(PrintWriter out) {
        this.out = out;
    }

    @Override
    public void run() {
        out.print(new CommandLine(this).getUsageMessage(CommandLine.Help.Ansi.OFF));
    }
}
