namespace Academy.Web.Features.Dogs;

/// <summary>A page that holds the form in which a dog is described.</summary>
public interface IDogPage
{
    DogForm Form { get; }

    DogFormView View { get; }
}
