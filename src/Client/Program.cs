using Microsoft.AspNetCore.Components.Web;
using Microsoft.AspNetCore.Components.WebAssembly.Hosting;
using Witnessmark.Client;
using Witnessmark.Client.Device;
using Witnessmark.Client.Doors;
using Witnessmark.Client.Languages;
using Witnessmark.Client.OwnShop;
using Witnessmark.Client.Searching;
using Witnessmark.Client.Settings;
using Witnessmark.Client.Today;

var builder = WebAssemblyHostBuilder.CreateDefault(args);
builder.RootComponents.Add<App>("#app");
builder.RootComponents.Add<HeadOutlet>("head::after");
builder.Services.AddSingleton(
    new HttpClient(new InOwnTongue { InnerHandler = new HttpClientHandler() })
    {
        BaseAddress = new(builder.HostEnvironment.BaseAddress),
    }
);
builder.Services.AddSingleton(TimeProvider.System);
builder.Services.AddSingleton<DeviceStore>();
builder.Services.AddSingleton<DeviceLedger>();
builder.Services.AddSingleton<DevicePhotographs>();
builder.Services.AddSingleton<Shop>();
builder.Services.AddSingleton<ShopDoor>();
builder.Services.AddSingleton<DoorKey>();
builder.Services.AddSingleton<DoorAtHand>();
builder.Services.AddSingleton<Exchange>();
builder.Services.AddSingleton<Timers>();
builder.Services.AddSingleton<Tongues>();
builder.Services.AddSingleton<SettingsAtHand>();
builder.Services.AddSingleton<Voice>();
builder.Services.AddSingleton<ScreenAwake>();
builder.Services.AddSingleton<SearchCall>();
builder.Services.AddSingleton<DayBoard>();
builder.Services.AddSingleton<AtHand>();
builder.Services.AddSingleton<OwnShopDeed>();

await builder.Build().RunAsync();
