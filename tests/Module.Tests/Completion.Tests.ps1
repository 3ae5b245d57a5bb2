BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    Copy-Fixture groups-nested (Join-Path $TestDrive 'hero.psd') > $null
    Copy-Fixture names-empty-and-spaces (Join-Path $TestDrive 'odd.psd') > $null
    Set-Content -LiteralPath (Join-Path $TestDrive 'left.layerledger.json'), (Join-Path $TestDrive 'left.json') -Value '{}'
    Push-Location -LiteralPath $TestDrive

    function Complete([string] $Line) { @((TabExpansion2 $Line $Line.Length).CompletionMatches.CompletionText) }
}

AfterAll { Pop-Location }

Describe 'Completion' {
    It 'offers <Expected> for: <Line>' -ForEach @(
        @{ Line = 'Get-Layer hero.psd -Name '; Expected = "'Figure'", "'Arm L'", "'Head'", "'Eye L'", "'Body'" }
        @{ Line = 'Get-Layer -LiteralPath hero.psd -Name B'; Expected = @("'Body'") }
        @{ Line = 'Get-LayerFile hero.psd | Rename-Layer -Name ey'; Expected = @("'Eye L'") }
        @{ Line = 'Get-Item hero.psd | Get-LayerFile | Set-Layer -LayerPath ''Figure/Head/E'; Expected = "'Figure/Head/Eye L'", "'Figure/Head/Eye L/Eye L'" }
        @{ Line = 'Get-LayerFile hero.psd | Move-Layer -Name Body -Into fi'; Expected = "'Figure'", "'Figure/Arm L'", "'Figure/Head'", "'Figure/Head/Eye L'" }
        @{ Line = 'Get-LayerFile hero.psd | Move-Layer -Name Body -Before ey'; Expected = "'Figure/Head/Eye L'", "'Figure/Head/Eye L/Eye L'" }
        @{ Line = 'Get-LayerFile hero.psd | New-LayerGroup -Name Eyes -Around Ey'; Expected = "'Figure/Head/Eye L'", "'Figure/Head/Eye L/Eye L'" }
        @{ Line = 'Get-Layer odd.psd -Name A'; Expected = @("'Arm ``[L``]``*'") }
        @{ Line = 'Get-Layer odd.psd -LiteralLayerPath A'; Expected = @("'Arm [L]*'") }
        @{ Line = 'Get-Layer missing.psd -Kind p'; Expected = 'Pixel', 'Placed' }
        @{ Line = 'Get-Layer hero.psd -Side '; Expected = 'Left', 'None', 'Right' }
        @{ Line = 'Get-LayerFile hero.psd | Set-Layer -Mark g'; Expected = 'Gray', 'Green' }
        @{ Line = 'Get-LayerFile hero.psd | Export-LayerImage parts -Name Bo'; Expected = @("'Body'") }
        @{ Line = 'Get-LayerFile hero.psd | Import-LayerLedger -LedgerPath le'; Expected = @("./left.layerledger.json") }
        @{ Line = 'Get-LayerFile hero.psd | Set-LayerStatus '; Expected = 'Done', 'Open', 'Recheck' }
        @{ Line = 'Get-LayerFile hero.psd | Export-LayerSheet sheet.png -Name Bo'; Expected = @("'Body'") }
        @{ Line = 'Get-LayerFile hero.psd | Export-LayerSheet sheet.png -Background c'; Expected = @('checker') }
        @{ Line = 'Get-LayerFile hero.psd | Export-LayerSheet sheet.png -PageSize a'; Expected = @('A4', 'A3') }
        @{ Line = 'Get-LayerFile hero.psd | Export-LayerSheet sheet.png -Arrange pa'; Expected = @('Pairs') }
        @{ Line = 'Get-LayerFile hero.psd | ConvertTo-RigFile -Keep Bo'; Expected = @("'Body'") }
        @{ Line = 'Get-LayerFile hero.psd | ConvertTo-RigFile -Clipping '; Expected = 'Cut', 'Merge' }
        @{ Line = 'Get-LayerProfile '; Expected = 'figure', 'figure-ja' }
        @{ Line = 'Test-LayerProfile figure-'; Expected = @('figure-ja') }
        @{ Line = 'New-LayerProfile hero.psd -Profile figure-'; Expected = @('figure-ja') }
        @{ Line = 'Get-LayerFile hero.psd | Rename-Layer -Normalize -Profile '; Expected = 'figure', 'figure-ja' }
        @{ Line = 'Get-LayerFile hero.psd | Set-LayerOrder -Profile figure-'; Expected = @('figure-ja') }
        @{ Line = 'Get-LayerFile hero.psd | Measure-LayerBudget -Profile figure-'; Expected = @('figure-ja') }
        @{ Line = 'Get-LayerFile hero.psd | Measure-LayerBudget -By '; Expected = 'File', 'Page', 'Part' }
        @{ Line = 'Get-LayerFile hero.psd | Measure-LayerBudget -PageSize 1'; Expected = '1024', '16384' }
        @{ Line = 'Get-LayerFile hero.psd | Measure-LayerCover -By '; Expected = 'Neighbour', 'Part' }
        @{ Line = 'Get-LayerFile hero.psd | Measure-LayerCover -Name Bo'; Expected = @("'Body'") }
        @{ Line = 'Get-LayerFile hero.psd | Measure-LayerStatus -By '; Expected = 'File', 'Group', 'Mark', 'Side' }
        @{ Line = 'Get-LayerFile hero.psd | Measure-LayerDetail -Framing '; Expected = 'Bust', 'Face', 'Figure' }
        @{ Line = 'Get-LayerFile hero.psd | Measure-LayerDetail -Screen F'; Expected = @("'Full HD'") }
        @{ Line = 'Get-LayerFile hero.psd | Measure-LayerDetail -Screen 1'; Expected = '1280x720', '1920x1080', '1080x1920' }
        @{ Line = 'Get-LayerFile hero.psd | Measure-LayerSymmetry -Name Bo'; Expected = @("'Body'") }
        @{ Line = 'Get-LayerFile hero.psd | Resize-LayerFile 50 -Filter '; Expected = 'Area', 'CatmullRom' }
        @{ Line = 'Test-LayerFile hero.psd -Rule OddC'; Expected = @('OddCanvasWidth') }
        @{ Line = 'Test-LayerFile hero.psd -ExcludeRule PairD'; Expected = 'PairDiffersInPlace', 'PairDiffersInSize' }
        @{ Line = 'Test-LayerFile hero.psd -Severity '; Expected = 'Error', 'Note', 'Warning' }
        @{ Line = 'Get-LayerFile hero.psd | Repair-LayerFile -Rule N'; Expected = 'NameOffProfile', 'NoCenterGuide' }
        @{ Line = 'Get-LayerFile hero.psd | Repair-LayerFile -ExcludeRule Em'; Expected = @('EmptyMargin') }
    ) {
        Complete $Line | Should -Be $Expected
    }

    It 'knows a file that a variable holds, pending edits included' {
        $global:layerToolsCompletion = Get-LayerFile hero.psd | Rename-Layer -Name Body -NewName Torso
        try { Complete '$layerToolsCompletion | Set-Layer -Name T' | Should -Be "'Torso'" }
        finally { Remove-Variable layerToolsCompletion -Scope Global }
    }

    It 'offers no layer of a file that cannot be read' {
        Set-Content broken.psd 'not a picture'
        Complete 'Get-Layer broken.psd -Name Bo' | Where-Object { $_ -like "*Body*" } | Should -BeNullOrEmpty
    }
}
