global using System.Globalization;
global using static Witnessmark.Client.Languages.Spoken;
global using Witnessmark.Handbook.Languages;
