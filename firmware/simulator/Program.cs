using NanoDustSwitch.Simulator.Commands;

return CommandLine.Run(args);
