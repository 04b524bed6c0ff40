using NanoDustSwitch.Inspector.Commands;

return CommandLine.Run(args);
