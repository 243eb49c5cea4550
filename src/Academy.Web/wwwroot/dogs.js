// Choosing a breed from the list ticks what is usual for it, as the button "Suggest" does. The person decides: what was chosen
// by hand stays, and what an earlier breed suggested goes with it.
const breed = document.querySelector('input[list="breeds"]');
let suggested = [];

const choices = (name) => [...breed.form.querySelectorAll(`[name="Form.${name}"]`)];

function suggest() {
  const known = [...document.querySelectorAll("#breeds option")].find((option) => option.value === breed.value);
  if (!known) return;
  for (const choice of suggested) choice.checked = false;
  const coat = choices("Coat").some((one) => one.checked) ? [] : choices("Coat").filter((one) => one.value === known.dataset.coat);
  const usual = known.dataset.hazards.split(" ");
  const hazards = choices("Hazards").filter((one) => !one.checked && usual.includes(one.value));
  suggested = [...coat, ...hazards];
  for (const choice of suggested) choice.checked = true;
}

breed?.addEventListener("change", suggest);
breed?.form.addEventListener("click", (event) => {
  const isTaken = (choice) => choice === event.target || (choice.type === "radio" && choice.name === event.target.name);
  suggested = suggested.filter((choice) => !isTaken(choice));
});
