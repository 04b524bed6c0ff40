using NanoDustSwitch.Sizing.Commands;

return CommandLine.Run(args);
